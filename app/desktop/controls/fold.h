// A section that can be collapsed, for what is used less often.
#pragma once

#include <QToolButton>
#include <QVBoxLayout>
#include <QWidget>

namespace tenter::desktop::controls {

/// A title button that shows and hides the content below it.
class Fold : public QWidget {
    Q_OBJECT

public:
    explicit Fold(const QString& title, QWidget* parent = nullptr);
    /// The layout of the content.
    [[nodiscard]] QVBoxLayout* box() const { return box_; }
    [[nodiscard]] QToolButton* button() const { return button_; }
    void setOpen(bool open);
    /// The number of settings inside that are set. The title shows it while the section is collapsed.
    void setCount(int count);

private:
    void showTitle();

    QString title_;
    QToolButton* button_;
    QWidget* content_;
    QVBoxLayout* box_;
    int made_ = 0;
};

/// Opens every fold around `widget`.
void unfold(QWidget* widget);

}  // namespace tenter::desktop::controls
