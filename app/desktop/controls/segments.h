// A row of buttons of which one is down.
#pragma once

#include <QAbstractButton>
#include <QButtonGroup>
#include <QWidget>

namespace tenter::desktop::controls {

/// Real buttons, so that each has a name and arrow keys walk through them.
class Segments : public QWidget {
    Q_OBJECT

public:
    explicit Segments(QWidget* parent = nullptr);
    /// Replaces the buttons. The one that was down stays down if its index still exists.
    void setTexts(const QStringList& texts, const QStringList& names = {});
    [[nodiscard]] int current() const { return group_.checkedId(); }
    /// −1: none is down. Emits nothing.
    void setCurrent(int index);
    [[nodiscard]] QAbstractButton* button(int index) const { return group_.button(index); }
    /// All buttons equally wide, filling the room.
    void setFilling(bool on);

signals:
    void chosen(int index);  ///< by the person

private:
    QButtonGroup group_;
    QStringList texts_;
    bool filling_ = false;
};

}  // namespace tenter::desktop::controls
