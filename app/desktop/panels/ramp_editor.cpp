#include "panels/ramp_editor.h"

#include <QGridLayout>
#include <algorithm>
#include <cmath>

#include "controls/glossary.h"
#include "controls/text_scale.h"

namespace tenter::desktop::panels {

namespace {

using controls::Json;

/// Size at the end of a new ramp divided by its size at the start: enough to see the difference.
constexpr double firstGrowth = 1.2;

/// Smallest difference between the two widths of a ramp, CSS px.
constexpr double leastSpan = 1;

Json point(double width, double size) {
    return Json::array({width, size});
}

}  // namespace

RampEditor::RampEditor(QWidget* parent)
    : Editor(parent),
      kind_(new controls::Segments(this)),
      lower_(new QWidget(this)),
      from_(new QLabel(this)),
      to_(new QLabel(lower_)) {
    kind_->setFilling(true);
    kind_->setTexts({QObject::tr("Fixed"), QObject::tr("Grows with width")});
    kind_->button(1)->setToolTip(QObject::tr(glossary::ramp));
    // Tab follows the order of creation: line by line, size and width, size and width.
    for (const int i : {1, 0, 3, 2}) {
        const bool width = i % 2 == 0;
        auto kind =
            width ? controls::numberKind(0, 10000, 10, 2, "px") : controls::numberKind(1, 400, 0.5, 3, "px");
        kind.usual = width ? 100 : 6;
        fields_[i] = new controls::NumberEditor(kind, i < 2 ? static_cast<QWidget*>(this) : lower_);
        fields_[i]->field().setAlwaysFilled(width);
        connect(fields_[i], &Editor::edited, this, [this] {
            keepWidthsInOrder();
            Q_EMIT edited();
        });
        connect(fields_[i], &Editor::finished, this, &Editor::finished);
        connect(fields_[i], &Editor::reverted, this, &Editor::reverted);
        connect(fields_[i], &Editor::cleared, this, &Editor::cleared);
        connect(fields_[i], &Editor::rejected, this, &Editor::rejected);
    }
    paste_ = new QPushButton(QObject::tr("Paste size…"), this);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    grid->addWidget(kind_, 0, 0, 1, 3);
    grid->addWidget(fields_[1], 1, 0);
    grid->addWidget(from_, 1, 1);
    grid->addWidget(fields_[0], 1, 2);
    grid->addWidget(lower_, 2, 0, 1, 3);
    grid->addWidget(paste_, 3, 0, 1, 3, Qt::AlignLeft);
    paste_->setToolTip(QObject::tr("Paste a font size as CSS: a value, a declaration or a rule"));
    connect(paste_, &QPushButton::clicked, this, &RampEditor::pasteRequested);
    auto* below = new QGridLayout(lower_);
    below->setContentsMargins(0, 0, 0, 0);
    below->setHorizontalSpacing(8);
    below->addWidget(fields_[3], 0, 0);
    below->addWidget(to_, 0, 1);
    below->addWidget(fields_[2], 0, 2);
    for (QGridLayout* each : {grid, below}) {
        each->setColumnStretch(0, 1);
        each->setColumnStretch(2, 1);
    }
    for (QLabel* label : {from_, to_}) {
        label->setFixedWidth(controls::scaled(88));
        label->setWordWrap(true);
        label->setAlignment(Qt::AlignCenter);
        label->setForegroundRole(QPalette::PlaceholderText);
    }
    setFocusProxy(&fields_[1]->field());
    setWidthTitle(QObject::tr("Viewport width"));
    for (QLabel* label : {from_, to_})
        label->setText(QObject::tr("at a width of"));
    connect(kind_, &controls::Segments::chosen, this, &RampEditor::choose);
    showKind(false);
}

double RampEditor::number(int field) const {
    return fields_[field]->field().amount().value;
}

void RampEditor::setValue(const Json& value) {
    const bool fluid = value.is_array() && value.size() == 2;
    if (fluid) {
        for (int i = 0; i < 4; ++i)
            fields_[i]->setValue(value[static_cast<std::size_t>(i / 2)][static_cast<std::size_t>(i % 2)]);
    } else {
        fields_[1]->setValue(value);
    }
    showKind(fluid);
    keepWidthsInOrder();
}

void RampEditor::keepWidthsInOrder() {
    constexpr double mostWidth = 10000;
    if (!fluid_) return;
    fields_[0]->field().setLimits(0, std::max(number(0), number(2) - leastSpan));
    fields_[2]->field().setLimits(std::min(number(2), number(0) + leastSpan), mostWidth);
}

Json RampEditor::value() const {
    if (!fluid_) return number(1);
    return Json::array({point(number(0), number(1)), point(number(2), number(3))});
}

QString RampEditor::accepts() const {
    return fields_[1]->accepts();
}

void RampEditor::setName(const QString& name) {
    fields_[0]->setName(QObject::tr("%1: the smaller width").arg(name));
    fields_[1]->setName(fluid_ ? QObject::tr("%1 at the smaller width").arg(name) : name);
    fields_[2]->setName(QObject::tr("%1: the larger width").arg(name));
    fields_[3]->setName(QObject::tr("%1 at the larger width").arg(name));
    kind_->setAccessibleName(QObject::tr("%1: fixed or growing").arg(name));
}

void RampEditor::setMarked(bool marked) {
    fields_[1]->setMarked(marked);
    fields_[3]->setMarked(marked);
}

void RampEditor::setResettable(bool resettable) {
    for (controls::NumberEditor* field : fields_)
        field->setResettable(resettable);
}

void RampEditor::setEnds(double from, double to) {
    leastWidth_ = from;
    mostWidth_ = to;
}

void RampEditor::setWidthTitle(const QString& title) {
    for (QLabel* label : {from_, to_})
        label->setToolTip(title);
}

void RampEditor::choose(int kind) {
    const bool fluid = kind == 1;
    if (fluid == fluid_) return;
    if (fluid) {
        const double size = number(1);
        fields_[0]->setValue(leastWidth_);
        fields_[2]->setValue(mostWidth_);
        fields_[3]->setValue(std::round(size * firstGrowth * 2) / 2);
    }
    showKind(fluid);
    keepWidthsInOrder();
    Q_EMIT edited();
    Q_EMIT finished();
}

void RampEditor::showKind(bool fluid) {
    fluid_ = fluid;
    kind_->setCurrent(fluid ? 1 : 0);
    lower_->setVisible(fluid);
    from_->setVisible(fluid);
    fields_[0]->setVisible(fluid);
}

}  // namespace tenter::desktop::panels
