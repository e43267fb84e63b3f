// The lanes and plots of the width axis below each other: their names, which are open, and their places.
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QObject>
#include <QPainter>
#include <map>
#include <optional>

#include "controls/data_table.h"

namespace tenter::desktop::axis {

class Disclosure;

/// Places widgets of one parent, the pane. All sizes are px.
class LaneStack : public QObject {
    Q_OBJECT

public:
    /// When a lane opens without a click: always, if the window is tall or very tall, or never.
    enum class OpensWhen { Always, WindowIsTall, WindowIsVeryTall, Chosen };

    explicit LaneStack(QWidget& pane) : pane_(pane) {}
    /// Adds a lane of `height` px, or a plot with a `share` of the remaining height. `key` is its name in
    /// English, shown in the window's language; `subtitle` is the unit of the values, `description` the
    /// tooltip of its name.
    void add(const char* key, const QString& subtitle, const QString& description, QWidget* content,
             int height, double share, OpensWhen opens = OpensWhen::Always);
    /// Gives the last lane added a longer name in menus and for screen readers.
    void nameInFull(const QString& name);
    /// Gives the last lane added a key that opens and closes it.
    void setKey(const QKeySequence& key);
    /// Moves the last lane added to the place below another.
    void moveLastBelow(const QWidget* content);
    /// Shows or hides a lane with its name, whether it is open or closed.
    void setAvailable(const QWidget* content, bool available);
    /// Opens the lanes for which a window of this height (px) has room, and closes the others, unless the
    /// user has opened or closed a lane.
    void openForWindow(int height);
    /// A window of at least this height has room for the main plots, px.
    static constexpr int tallWindow = 960;

    /// The keys of the open lanes, if the user has opened or closed a lane.
    [[nodiscard]] std::optional<QStringList> chosenLanes() const;
    /// Opens the lanes of these keys and closes the others, as if the user did; without keys, the height of
    /// the window decides again.
    void chooseLanes(const std::optional<QStringList>& keys);

    /// One toggle action per lane, which opens and closes it.
    [[nodiscard]] QList<QAction*> actions() const;
    /// The open lanes that have data.
    struct Data {
        QString name;
        const controls::HasData* source;
    };
    [[nodiscard]] QList<Data> openData() const;
    /// The height at which the open plots are comfortable to read in a tall window or a short one.
    [[nodiscard]] int comfortableHeight(bool tall) const;
    /// True if a plot is open, which can use more height.
    [[nodiscard]] bool hasPlot() const;
    /// The height below which open lanes and names of closed ones do not fit.
    [[nodiscard]] int minimumHeight() const;
    /// Places all lanes from `top` downwards in the pane. Returns where the names of closed lanes begin.
    int arrange(int top);
    void update();
    /// Paints a line above each open lane and above the names of closed ones.
    void paintLines(QPainter& painter) const;

Q_SIGNALS:
    /// A lane was opened (`opened`), closed, or became available or not: `arrange` is necessary.
    void changed(bool opened);

private:
    struct Lane {
        QString key;
        QWidget* content;
        Disclosure* disclosure;
        QAction* action;
        OpensWhen opens;
        int height;             ///< 0: a plot, which shares the remaining height
        double share;           ///< of the remaining height, 0 to 1
        bool available = true;  ///< false: neither the lane nor its name is shown
        [[nodiscard]] bool isOpen() const { return available && action->isChecked(); }
        [[nodiscard]] bool isClosed() const { return available && !action->isChecked(); }
    };
    /// Arranges the names of closed lanes in rows from `y` downwards, or only computes if `y` is empty.
    /// Returns the height of the rows.
    int arrangeClosed(std::optional<int> y) const;
    /// The heights of the open plots if all lanes begin at `top`: by their shares, but at least what a plot
    /// needs, if the pane has room.
    [[nodiscard]] std::map<const Lane*, int> plotHeights(int top) const;

    QWidget& pane_;
    QList<Lane> lanes_;
    bool chosenByUser_ = false;        // then the height of the window no longer opens or closes lanes
    std::optional<OpensWhen> opened_;  // which lanes were opened for the height of the window
    int closedFrom_ = 0;
};

}  // namespace tenter::desktop::axis
