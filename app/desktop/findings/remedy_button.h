// A button for a remedy: what it does, and below it what else changes.
#pragma once

#include <QPushButton>

namespace tenter::desktop::findings {

/// Both texts break into lines, so that nothing is clipped.
class RemedyButton : public QPushButton {
    Q_OBJECT

public:
    /// `details`: the findings that come and go, for the tooltip.
    RemedyButton(const QString& title, const QString& effect, const QString& details,
                 QWidget* parent = nullptr);
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont effectFont() const;

    QString title_, effect_;
};

}  // namespace tenter::desktop::findings
