// The dialog “About Tenter”: version, licence, libraries.
#pragma once

#include <QDialog>

namespace tenter::desktop::help {

class AboutDialog : public QDialog {
    Q_OBJECT

public:
    explicit AboutDialog(QWidget* parent);
};

}  // namespace tenter::desktop::help
