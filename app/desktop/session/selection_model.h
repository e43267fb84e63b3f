// What is selected: cards or parts of them, and the role that panels show settings of.
#pragma once

#include <QObject>
#include <optional>
#include <string>
#include <vector>

#include "session/place.h"
#include "session/shown_project.h"

namespace tenter::desktop {

/// Nothing that the document does not have is selected, in every slot of every signal. While a text test adds
/// or removes parts, nothing can be selected.
class SelectionModel : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Place = 1,  ///< `place()` or `others()`
        Role = 2,   ///< `role()`
        Reveal = 4  ///< not a change: views scroll to what is selected
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    SelectionModel(Document& document, const ShownProject& shown, QObject* parent = nullptr);

    /// The selected card or part; the one selected last if there are several.
    [[nodiscard]] const std::optional<Place>& place() const;
    /// Further selected cards and parts, in the order in which they were selected.
    [[nodiscard]] const std::vector<Place>& others() const;
    /// All selected cards and parts, in the order of the row.
    [[nodiscard]] std::vector<Place> all() const;
    /// The roles of all selected texts, each once; `role()` first.
    [[nodiscard]] std::vector<std::string> roles() const;
    /// The selected card, or that of the selected part.
    [[nodiscard]] std::optional<std::size_t> card() const;
    /// The selected part.
    [[nodiscard]] std::optional<project::PartRef> part() const;
    /// The role that panels show settings of: the one chosen last, by `selectRole` or as that of the selected
    /// text; `heading` in a project that was just opened.
    [[nodiscard]] const std::string& role() const;

    /// Selects a card or a part, or nothing. `reveal`: views scroll to it, even if it was selected before.
    void select(const std::optional<Place>& place, bool reveal = false);
    /// Adds a card or a part to those selected; removes it if it is one of them.
    void toggle(const Place& place);
    /// Selects the parts from the selected one to `place`: those of the same role in the cards between, or
    /// those between in one card. Selects `place` alone if no part is selected.
    void extend(const Place& place);
    /// Selects several; the last becomes `place()`.
    void selectSeveral(const std::vector<Place>& places, bool reveal = false);
    /// Selects a role; the selected card or part stays. `reveal` as above.
    void selectRole(const std::string& role, bool reveal = false);

Q_SIGNALS:
    void changed(tenter::desktop::SelectionModel::Changes changes);

private:
    /// What listeners know.
    struct State {
        std::optional<Place> place;
        std::vector<Place> others;
        std::string role;
        int opening = 0;
    };
    void follow() const;
    /// Removes from the selection what the document does not have, and applies the role of a selected text.
    void adjust() const;
    void announce(bool reveal);
    [[nodiscard]] bool isThere(const Place& place) const;
    [[nodiscard]] const project::TextPart* textAt(const Place& place) const;

    Document& document_;
    const ShownProject& shown_;
    // Updated when they are read: see `follow`.
    mutable int revision_ = -1, opening_;
    mutable std::optional<Place> place_;
    mutable std::vector<Place> others_;
    mutable std::string role_ = "heading";
    mutable bool roleChosen_ = false;  // `role_` need not be that of the selected text
    State announced_;
};

}  // namespace tenter::desktop
