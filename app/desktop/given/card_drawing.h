// A plain drawing of a row: cards as outlined boxes, their parts stacked, each with its role and first words.
#pragma once

#include <QButtonGroup>
#include <QLabel>
#include <QScrollArea>
#include <vector>

#include "markup/given.h"

namespace tenter::desktop::given {

class CardDrawing : public QScrollArea {
    Q_OBJECT

public:
    explicit CardDrawing(QWidget* parent = nullptr);
    /// Null for none. Of many cards the first are drawn, and how many are left is said.
    void setRow(const markup::GivenRow* row);
    /// Marks the box of an element, if it has one.
    void setCurrent(markup::NodeId node);
    /// The box of an element; null without one.
    [[nodiscard]] QAbstractButton* boxOf(markup::NodeId node) const;

signals:
    void chosen(quint32 node);  ///< by the person: markup::NodeId

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

}  // namespace tenter::desktop::given
