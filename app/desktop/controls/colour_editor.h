// An editor for a colour: a swatch that opens a colour dialog, and a field for the hexadecimal notation.
#pragma once

#include <QAbstractButton>
#include <QLineEdit>

#include "controls/editor.h"
#include "units/colour.h"

namespace tenter::desktop::controls {

class ColourEditor : public Editor {
    Q_OBJECT

public:
    explicit ColourEditor(QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString accepts() const override;
    void setName(const QString& name) override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void typed();
    void choose();
    void display(const units::Colour& colour);
    void commit();

    units::Colour colour_, start_;
    QString name_;
    QAbstractButton* swatch_;
    QLineEdit* field_;
    bool touched_ = false;
};

}  // namespace tenter::desktop::controls
