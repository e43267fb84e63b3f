#include "page_import/measure_switch.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <utility>

#include "controls/inks.h"
#include "document/wording.h"
#include "page_import/row_reader.h"

namespace tenter::desktop::page_import {

MeasureSwitch::MeasureSwitch(RowReader& reader, QWidget* parent)
    : QWidget(parent),
      reader_(reader),
      box_(new QCheckBox(this)),
      stop_(new QPushButton(QObject::tr("&Stop"), this)),
      state_(new QLabel(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(box_, 1);
    line->addWidget(stop_);
    box->addLayout(line);
    box->addWidget(state_);
    box_->setToolTip(toolTipText(QObject::tr(
        "The browser lays out the page at every whole viewport width, without scripts and without network "
        "access. Tenter reads the position and width of the container and the root font size. Where they "
        "differ from the CSS as Tenter reads it, the report says so and Tenter imports the measured "
        "values.")));
    stop_->setAutoDefault(false);
    stop_->setToolTip(QObject::tr("Stop the browser and import what the CSS says"));
    QSizePolicy kept = stop_->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    stop_->setSizePolicy(kept);
    state_->setWordWrap(true);
    state_->setAccessibleName(QObject::tr("State of the measuring"));
    connect(box_, &QCheckBox::toggled, this, [this](bool on) {
        failure_.clear();
        reader_.setMeasuring(on && !browsers_.empty() ? std::optional(browsers_.front()) : std::nullopt);
        updateState();
    });
    connect(stop_, &QPushButton::clicked, this, [this] { box_->setChecked(false); });
    connect(&reader_, &RowReader::started, this, [this] {
        failure_.clear();
        updateState();
    });
    connect(&reader_, &RowReader::finished, this, &MeasureSwitch::updateState);
    connect(&reader_, &RowReader::measuringFailed, this, [this](const QString& why) {
        failure_ = why;
        updateState();
    });
    setBrowsers(compare::installedBrowsers());
}

void MeasureSwitch::setBrowsers(std::vector<compare::Browser> browsers) {
    browsers_ = std::move(browsers);
    box_->setEnabled(!browsers_.empty());
    box_->setText(browsers_.empty()
                      ? QObject::tr("&Measure container and root size (no browser is installed)")
                      : QObject::tr("&Measure container and root size in %1").arg(browsers_.front().title));
    if (browsers_.empty()) box_->setChecked(false);
    updateState();
}

void MeasureSwitch::updateState() {
    const bool measuring = reader_.isMeasuring();
    stop_->setVisible(measuring);
    QPalette ink = palette();
    if (!failure_.isEmpty()) ink.setColor(QPalette::WindowText, controls::caution(ink));
    state_->setPalette(ink);
    state_->setText(measuring
                        ? QObject::tr("%1 lays out the page at every width…").arg(browsers_.front().title)
                        : failure_);
    state_->setVisible(!state_->text().isEmpty());
}

}  // namespace tenter::desktop::page_import
