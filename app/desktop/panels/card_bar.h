// Which card a panel is about: a number with arrows, and what can be done with the card.
#pragma once

#include <QLabel>
#include <QToolButton>

#include "panels/target.h"

namespace tenter::desktop::panels {

class CardBar : public QWidget {
    Q_OBJECT

public:
    /// `editing`: with buttons that add, remove and move cards, unless the row is a page's own.
    CardBar(Context& context, bool editing, QWidget* parent = nullptr);
    void refresh();
    /// The selected card, else the first; −1 if there is none.
    [[nodiscard]] static int cardOf(const Viewing& viewing);

private:
    QToolButton* button(const QIcon& icon, const QString& name);
    void go(int by);
    void addCard();
    void removeCard();
    void moveCard(int by);

    Context& context_;
    QLabel* title_;
    QToolButton *previous_, *next_;
    QToolButton *earlier_ = nullptr, *later_ = nullptr, *add_ = nullptr, *remove_ = nullptr;
};

}  // namespace tenter::desktop::panels
