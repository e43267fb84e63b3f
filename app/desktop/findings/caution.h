// What automated checks cannot show, as one line that opens to the full text.
#pragma once

#include <QLabel>

namespace tenter::desktop::findings {

class Caution : public QLabel {
    Q_OBJECT

public:
    explicit Caution(QWidget* parent = nullptr);

private:
    void show(bool inFull);
};

}  // namespace tenter::desktop::findings
