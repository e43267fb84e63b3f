// What is done with whole cards, and with parts in their card. Each is one step that can be undone.
#pragma once

#include <QObject>
#include <vector>

#include "session/session.h"

namespace tenter::desktop::row::editing {

class CardCommands : public QObject {
    Q_OBJECT

public:
    explicit CardCommands(Session& session) : session_(session) {}
    /// Moves cards in front of another one, see moveCards.
    void moveTo(const std::vector<std::size_t>& cards, std::size_t before);
    /// Moves the selected cards by one place: 1 later, −1 earlier.
    void move(int by);
    /// True if `move` would do something.
    [[nodiscard]] bool canMove(int by) const;
    void duplicate();
    void remove();
    /// Adds a card behind the selected one, or behind the last.
    void add();
    /// Moves the selected part by one place in its card: 1 down, −1 up.
    void movePart(int by);
    [[nodiscard]] bool canMovePart(int by) const;
    /// Removes the selected parts.
    void removePart();
    /// `Remove part`, `Remove 3 parts`.
    [[nodiscard]] QString removePartTitle() const;

Q_SIGNALS:
    void message(const QString& text);

private:
    bool refuses();

    Session& session_;
};

}  // namespace tenter::desktop::row::editing
