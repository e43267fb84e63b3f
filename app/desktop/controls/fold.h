// What is wanted less often: a button that opens and closes it.
#pragma once

#include <QToolButton>
#include <QVBoxLayout>
#include <QWidget>

namespace tenter::desktop::controls {

class Fold : public QWidget {
    Q_OBJECT

public:
    explicit Fold(const QString& title, QWidget* parent = nullptr);
    /// What it holds is put in here.
    [[nodiscard]] QVBoxLayout* box() const { return box_; }
    [[nodiscard]] QToolButton* button() const { return button_; }
    void setOpen(bool open);
    /// How many of the settings within are made: told while they are out of sight.
    void setMade(int count);

private:
    void showTitle();

    QString title_;
    QToolButton* button_;
    QWidget* content_;
    QVBoxLayout* box_;
    int made_ = 0;
};

/// Opens every fold that `widget` stands in.
void unfold(QWidget* widget);

}  // namespace tenter::desktop::controls
