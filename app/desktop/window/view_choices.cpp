#include "window/view_choices.h"

#include <QHBoxLayout>
#include <cmath>

#include "document/wording.h"

namespace tenter::desktop::window {

namespace {

QLabel* quiet(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

}  // namespace

ViewChoices::ViewChoices(row::RowView& row, BreakChoice& breaks, QWidget* parent)
    : QWidget(parent),
      row_(row),
      engines_(new controls::Segments(this)),
      zoom_(new controls::Segments(this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    box->addWidget(quiet(QObject::tr("Line breaks as in"), this));
    box->addWidget(engines_);
    box->addSpacing(16);
    box->addWidget(quiet(QObject::tr("View"), this));
    box->addWidget(zoom_);
    addBreaks(breaks);
    addZoom();
}

void ViewChoices::addBreaks(BreakChoice& breaks) {
    engines_->setAccessibleName(QObject::tr("Line breaks as in"));
    QStringList engines;
    QStringList names;
    for (const text::BreakProfile* profile : text::profiles()) {
        engines << engineTitle(*profile);
        names << QObject::tr("Line breaks as in %1").arg(engineTitle(*profile));
    }
    engines_->setTexts(engines, names);
    connect(engines_, &controls::Segments::chosen, &breaks, &BreakChoice::choose);
    const auto show = [this, &breaks] { engines_->setCurrent(breaks.current()); };
    connect(&breaks, &BreakChoice::changed, this, show);
    show();
}

void ViewChoices::addZoom() {
    zoom_->setAccessibleName(QObject::tr("Zoom of the row view"));
    connect(zoom_, &controls::Segments::chosen, this, [this](int index) {
        if (index == 0)
            row_.actualSizeAction()->trigger();
        else
            row_.fitAction()->setChecked(true);
    });
    connect(&row_, &row::RowView::zoomChanged, this, &ViewChoices::showZoom);
    connect(row_.fitAction(), &QAction::toggled, this, &ViewChoices::showZoom);
    showZoom();
}

// The first segment shows a zoom by the wheel in place of 100 %, and sets it back to 100 %.
void ViewChoices::showZoom() {
    const auto percent = [](double zoom) {
        return QString::number(std::lround(zoom * 100)) + QStringLiteral("\u00A0%");
    };
    const bool fit = row_.fit();
    zoom_->setTexts(
        {fit ? percent(1) : percent(row_.zoom()),
         fit ? QObject::tr("Fit %1").arg(percent(row_.zoom())) : QObject::tr("Fit")},
        {QObject::tr("Actual size (Ctrl+0)"), QObject::tr("Fit whole cards to the window (Ctrl+9)")});
    zoom_->setCurrent(fit ? 1 : 0);
}

}  // namespace tenter::desktop::window
