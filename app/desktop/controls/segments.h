// A row of buttons of which one is checked.
#pragma once

#include <QAbstractButton>
#include <QButtonGroup>
#include <QWidget>

namespace tenter::desktop::controls {

/// Its buttons are widgets, so that each has an accessible name and arrow keys move between them.
class Segments : public QWidget {
    Q_OBJECT

public:
    explicit Segments(QWidget* parent = nullptr);
    /// Replaces the buttons. `names` are accessible names and tooltips. The checked index stays checked if it
    /// still exists.
    void setTexts(const QStringList& texts, const QStringList& names = {});
    [[nodiscard]] int current() const { return group_.checkedId(); }
    /// Checks a button, or none for −1, without a signal.
    void setCurrent(int index);
    [[nodiscard]] QAbstractButton* button(int index) const { return group_.button(index); }
    /// Lets the buttons fill the width equally.
    void setFilling(bool on);

Q_SIGNALS:
    void chosen(int index);         ///< by the person
    void doubleClicked(int index);  ///< after `chosen`

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void markFirst();
    QButtonGroup group_;
    QStringList texts_;
    bool filling_ = false;
};

}  // namespace tenter::desktop::controls
