// The cards as a text was understood: a list with the parts of each card.
#pragma once

#include <QTreeWidget>

#include "start/pasted_text.h"

namespace tenter::desktop::new_row {

class UnderstoodView : public QTreeWidget {
    Q_OBJECT

public:
    explicit UnderstoodView(QWidget* parent = nullptr);
    /// Shows the cards of a text; without cards, those of the row that is made (`example`).
    void setCards(const std::vector<tenter::start::PastedCard>& cards);
};

}  // namespace tenter::desktop::new_row
