// The bar that shows and changes the card a panel edits.
#pragma once

#include <QLabel>
#include <QToolButton>

#include "panels/target.h"

namespace tenter::desktop::panels {

class CardBar : public QWidget {
    Q_OBJECT

public:
    /// `editing`: with buttons that add, remove and move cards. They are hidden while the row is imported.
    CardBar(Context& context, bool editing, QWidget* parent = nullptr);
    void refresh();
    /// Index of the selected card, else of the first; empty if there is none.
    [[nodiscard]] static std::optional<std::size_t> cardOf(const Session& session);

private:
    QToolButton* button(const QIcon& icon, const QString& name);
    /// The card `by` places after the current one; empty if there is none.
    [[nodiscard]] std::optional<std::size_t> cardBeside(int by) const;
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
