// A message in the status bar that fades after some seconds.
#pragma once

#include <QGraphicsOpacityEffect>
#include <QLabel>
#include <QPropertyAnimation>
#include <QTimer>

namespace tenter::desktop::window {

class StatusNote : public QLabel {
    Q_OBJECT

public:
    explicit StatusNote(QWidget* parent = nullptr);
    void showMessage(const QString& text);

private:
    void fit();

    QGraphicsOpacityEffect* effect_;
    QPropertyAnimation fade_;
    QTimer hold_;
};

}  // namespace tenter::desktop::window
