#include "axis/data_dialog.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>

#include "controls/choice_editors.h"
#include "controls/text_scale.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

DataDialog::DataDialog(const LaneStack& lanes, Session& session, QWidget* parent)
    : QDialog(parent), lanes_(lanes), lane_(new controls::CalmCombo(this)), table_(new QTableWidget(this)) {
    setWindowTitle(QObject::tr("Data of lanes and plots"));
    resize(controls::scaled(640), controls::scaled(520));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(16, 16, 16, 16);
    box->setSpacing(8);
    lane_->setAccessibleName(QObject::tr("Lane or plot"));
    table_->setAccessibleName(QObject::tr("Data"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->setWordWrap(true);
    box->addWidget(lane_);
    box->addWidget(table_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* copy = buttons->addButton(QObject::tr("Copy table"), QDialogButtonBox::ActionRole);
    box->addWidget(buttons);
    connect(copy, &QPushButton::clicked, this, &DataDialog::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(lane_, &QComboBox::currentIndexChanged, this, &DataDialog::fillTable);
    connect(&lanes_, &LaneStack::changed, this, &DataDialog::fillLanes);
    onChange(session.layouts, LayoutCache::Change::Row, this, &DataDialog::fillTable);
    onChange(session.checks, CheckRunner::Change::Findings | CheckRunner::Change::Audience, this,
             &DataDialog::fillTable);
}

void DataDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    fillLanes();
}

void DataDialog::fillLanes() {
    const QString before = lane_->currentText();
    {
        const QSignalBlocker quiet(lane_);
        lane_->clear();
        for (const LaneStack::Data& open : lanes_.openData())
            lane_->addItem(open.name);
        lane_->setCurrentIndex(std::max(0, lane_->findText(before)));
    }
    fillTable();
}

void DataDialog::fillTable() {
    if (!isVisible()) return;
    const auto open = lanes_.openData();
    const int index = lane_->currentIndex();
    const controls::DataTable now =
        index >= 0 && index < open.size() ? open[index].source->data() : controls::DataTable();
    if (now == data_ && table_->columnCount() > 0) return;
    data_ = now;
    table_->clear();
    table_->setColumnCount(static_cast<int>(data_.heads.size()));
    table_->setRowCount(static_cast<int>(data_.rows.size()));
    table_->setHorizontalHeaderLabels(data_.heads);
    for (int row = 0; row < table_->rowCount(); ++row)
        for (int column = 0; column < table_->columnCount(); ++column)
            table_->setItem(row, column, new QTableWidgetItem(data_.rows[row].value(column)));
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->resizeRowsToContents();
}

void DataDialog::copy() {
    QStringList lines{data_.heads.join('\t')};
    for (const QStringList& row : data_.rows)
        lines << row.join('\t');
    QGuiApplication::clipboard()->setText(lines.join('\n') + '\n');
}

}  // namespace tenter::desktop::axis
