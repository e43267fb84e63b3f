// The list of found settings below the field “Find setting”.
#pragma once

#include <QListView>
#include <QSortFilterProxyModel>
#include <QStandardItemModel>

namespace tenter::desktop::window {

/// Part of the window, not a pop-up: a pop-up keeps the mouse to itself, so a click on anything else would
/// only close it.
class SettingList : public QListView {
    Q_OBJECT

public:
    /// `field`: the field that the list stands below. The list becomes a child of its window when it is
    /// shown.
    explicit SettingList(QWidget* field);
    /// Adds a setting. `title` is shown; `words` are searched, one text a line; `place` is given to `chosen`.
    void add(const QString& title, const QString& words, int place);
    /// Shows the settings that contain `words`, the first one lit, or hides the list if there are none.
    void find(const QString& words);
    /// The place of the entry that is lit, or -1.
    [[nodiscard]] int lit() const;
    /// Lights another entry: `by` 1 is the next, -1 the previous one.
    void step(int by);

Q_SIGNALS:
    void chosen(int place);

protected:
    void hideEvent(QHideEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// Puts the list below the field, as wide as its longest entry, and inside the window.
    void place();

    QWidget* field_;
    QStandardItemModel all_;
    QSortFilterProxyModel found_;
};

}  // namespace tenter::desktop::window
