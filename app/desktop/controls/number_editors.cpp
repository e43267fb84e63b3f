#include "controls/number_editors.h"

#include <QHBoxLayout>
#include <cmath>
#include <limits>

#include "units/length.h"
#include "units/number.h"

namespace tenter::desktop::controls {

namespace {

Amount amountOf(const Json& value) {
    if (value.is_number()) return {value.get<double>(), {}};
    if (!value.is_string()) return {};
    const auto length = units::Length::parse(value.get<std::string>());
    if (!length) return {};
    const std::string_view unit = units::suffix(length->unit());
    return {length->value(), QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()))};
}

}  // namespace

NumberEditor::NumberEditor(AmountKind kind, QWidget* parent)
    : Editor(parent), field_(new NumberField(std::move(kind), this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(field_);
    setFocusProxy(field_);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(field_, &NumberField::amountEdited, this, &Editor::edited);
    connect(field_, &NumberField::typingFinished, this, &Editor::finished);
    connect(field_, &NumberField::reverted, this, &Editor::reverted);
    connect(field_, &NumberField::cleared, this, &Editor::cleared);
    connect(field_, &NumberField::rejected, this, &Editor::rejected);
}

void NumberEditor::setValue(const Json& value) {
    field_->setAmount(amountOf(value));
}

Json NumberEditor::value() const {
    const Amount& amount = field_->amount();
    if (amount.unit.isEmpty() && field_->kind().plain) {
        const bool whole = field_->kind().decimals == 0 && std::abs(amount.value) < 1e9;
        return whole ? Json(static_cast<int>(std::lround(amount.value))) : Json(amount.value);
    }
    if (field_->kind().keywords.contains(amount.unit)) return amount.unit.toStdString();
    return amount.value == 0 ? "0" : units::number(amount.value) + amount.unit.toStdString();
}

QString NumberEditor::accepts() const {
    QString text = requirement(field_->kind());
    text[0] = text[0].toUpper();
    return text + '.';
}

void NumberEditor::setName(const QString& name) {
    field_->setAccessibleName(name);
}

void NumberEditor::setMarked(bool marked) {
    field_->setMarked(marked);
}

void NumberEditor::setResettable(bool resettable) {
    field_->setResettable(resettable);
}

AmountKind lengthKind(const QStringList& units, const QStringList& keywords, double least, double most) {
    AmountKind kind;
    kind.units = units;
    kind.keywords = keywords;
    kind.plain = false;
    kind.least = least;
    kind.most = most;
    return kind;
}

AmountKind numberKind(double least, double most, double step, int decimals, const QString& suffix) {
    AmountKind kind;
    kind.least = least;
    kind.most = most;
    kind.step = step;
    kind.decimals = decimals;
    kind.suffix = suffix;
    return kind;
}

AmountKind lineHeightKind() {
    AmountKind kind;
    kind.units = {"px", "rem", "em"};
    kind.most = 1000;
    kind.step = 0.05;
    kind.usual = 0.8;
    return kind;
}

}  // namespace tenter::desktop::controls
