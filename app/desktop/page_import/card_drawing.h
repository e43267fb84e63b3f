// A simple drawing of the row: each card as a box, its parts stacked, with role and first words.
#pragma once

#include <QButtonGroup>
#include <QLabel>
#include <QScrollArea>
#include <vector>

#include "markup/given.h"

namespace tenter::desktop::page_import {

class CardDrawing : public QScrollArea {
    Q_OBJECT

public:
    explicit CardDrawing(QWidget* parent = nullptr);
    /// Draws `row`, or nothing if it is null. Of many cards only the first are drawn; a label gives the
    /// number of the others.
    void setRow(const markup::GivenRow* row);
    /// Marks the box of an element; removes the mark if the element has no box.
    void setCurrent(markup::NodeId node);
    /// The box of an element, or null.
    [[nodiscard]] QAbstractButton* boxOf(markup::NodeId node) const;

Q_SIGNALS:
    void chosen(quint32 node);  ///< the user clicked the box of this markup::NodeId

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    /// A card's box, then its parts'.
    using CardBoxes = std::vector<QAbstractButton*>;
    QAbstractButton* addBox(markup::NodeId node, const QString& role, const QString& words, bool card);
    void arrange();

    QWidget* sheet_;
    QLabel* more_;
    QButtonGroup group_;
    std::vector<CardBoxes> cards_;
};

}  // namespace tenter::desktop::page_import
