// Editors over a number field: lengths, plain numbers, line heights.
#pragma once

#include "controls/editor.h"
#include "controls/number_field.h"

namespace tenter::desktop::controls {

/// A number field for a setting's JSON value.
class NumberEditor : public Editor {
    Q_OBJECT

public:
    explicit NumberEditor(AmountKind kind, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    [[nodiscard]] QString accepts() const override;
    void setName(const QString& name) override;
    void setMarked(bool marked) override;
    void setResettable(bool resettable) override;
    [[nodiscard]] NumberField& field() const { return *field_; }

private:
    NumberField* field_;
};

/// CSS lengths in `units`, or one of `keywords`. Plain numbers are not accepted.
AmountKind lengthKind(const QStringList& units, const QStringList& keywords = {}, double least = 0,
                      double most = 10000);
/// Plain numbers.
AmountKind numberKind(double least, double most, double step, int decimals, const QString& suffix = {});
/// A plain number (a multiple of the font size) or a length.
AmountKind lineHeightKind();

}  // namespace tenter::desktop::controls
