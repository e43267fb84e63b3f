// The dialog “Data”: what a lane or a plot draws, as a table.
#pragma once

#include <QComboBox>
#include <QDialog>
#include <QTableWidget>

#include "axis/lane_stack.h"
#include "session/session.h"

namespace tenter::desktop::axis {

class DataDialog : public QDialog {
    Q_OBJECT

public:
    DataDialog(const LaneStack& lanes, Session& session, QWidget* parent);

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// Lists the lanes that are open now.
    void fillLanes();
    void fillTable();
    /// Copies the table with tabs between its columns, as spreadsheets read it.
    void copy();

    const LaneStack& lanes_;
    QComboBox* lane_;
    QTableWidget* table_;
    controls::DataTable data_;
};

}  // namespace tenter::desktop::axis
