// A message in the status bar that goes after some seconds.
#pragma once

#include <QLabel>
#include <QTimer>

namespace tenter::desktop::window {

class StatusNote : public QLabel {
    Q_OBJECT

public:
    explicit StatusNote(QWidget* parent = nullptr);
    void showMessage(const QString& text);

private:
    void fit();

    QTimer hold_;
};

}  // namespace tenter::desktop::window
