// How the row is viewed: viewport width, variant and break profile.
#pragma once

#include <QObject>

#include "session/shown_project.h"
#include "text/profile.h"

namespace tenter::desktop {

/// Width and variant stay within the project that is shown, in every slot of every signal.
class ViewState : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Width = 1,        ///< `width()`
        Variant = 2,      ///< `variant()`, or another project is open
        BreakProfile = 4  ///< `profile()`
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    ViewState(Document& document, const ShownProject& shown, QObject* parent = nullptr);

    /// Viewport width, CSS px, within the project's range.
    [[nodiscard]] double width() const;
    /// Index of the current variant in the project that is shown.
    [[nodiscard]] std::size_t variant() const;
    /// The break profile: the rules by which lines are broken.
    [[nodiscard]] const text::BreakProfile& profile() const { return *profile_; }

    void setWidth(double width);  ///< CSS px, clamped to the project's range
    void setVariant(std::size_t variant);
    void setProfile(const text::BreakProfile& profile);

Q_SIGNALS:
    void changed(tenter::desktop::ViewState::Changes changes);

private:
    /// What listeners know.
    struct State {
        double width = 0;
        std::size_t variant = 0;
        const text::BreakProfile* profile = nullptr;
        int opening = 0;
    };
    [[nodiscard]] State state() const;
    void announce();

    Document& document_;
    const ShownProject& shown_;
    double width_ = 1120;
    mutable std::size_t variant_ = 0;  // 0 as soon as another project is open
    mutable int opening_;
    const text::BreakProfile* profile_ = &text::defaultProfile();
    State announced_;
};

}  // namespace tenter::desktop
