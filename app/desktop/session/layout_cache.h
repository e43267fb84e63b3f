// The prepared rows and the layouts of the project that is shown.
#pragma once

#include <QObject>
#include <map>
#include <memory>
#include <utility>

#include "draw/row.h"
#include "layout/layout.h"
#include "session/view_state.h"

namespace tenter::desktop {

/// What a prepared row was made from. Rows with equal keys are the same.
struct RowKey {
    int opening = 0;   ///< of the document
    int revision = 0;  ///< of the project that is shown
    std::size_t variant = 0;
    const text::BreakProfile* profile = nullptr;
    /// True if both are of one variant of one project, maybe before and after an edit.
    [[nodiscard]] bool hasSameVariant(const RowKey& other) const {
        return opening == other.opening && variant == other.variant;
    }
    friend bool operator==(const RowKey&, const RowKey&) = default;
};

/// The row of one variant, laid out at one width. Valid until the next change of the session.
using draw::LaidOutRow;

/// Prepares rows and lays them out at the current width when they are read, and keeps them until the project
/// that is shown, the width, the variant or the break profile changes. What it returns is up to date in every
/// slot of every signal; references are valid until the next change.
class LayoutCache : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Layout = 1,  ///< `layout()`; set with every other change
        Row = 2,     ///< `row()`: not only the width has changed
        Variant = 4  ///< another variant, or another project
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    LayoutCache(Document& document, const ShownProject& shown, const ViewState& view,
                QObject* parent = nullptr);

    /// What is laid out: the project that is shown, and the current variant, width and break profile.
    [[nodiscard]] const project::Project& project() const { return shown_.project(); }
    [[nodiscard]] std::size_t variant() const { return view_.variant(); }
    [[nodiscard]] double width() const { return view_.width(); }
    [[nodiscard]] const text::BreakProfile& profile() const { return view_.profile(); }
    [[nodiscard]] RowKey key() const;

    /// The current variant, prepared, and its layout at the current width.
    [[nodiscard]] const layout::PreparedRow& row() const { return *made(variant(), profile()).row; }
    [[nodiscard]] const layout::Layout& layout() const { return layout(variant(), profile()); }
    /// Index of the band of the current width.
    [[nodiscard]] std::size_t band() const { return row().bandAt(width()); }
    [[nodiscard]] LaidOutRow current() const { return of(variant()); }

    /// The same for any variant of the project that is shown, by index.
    [[nodiscard]] LaidOutRow of(std::size_t variant) const;
    /// The layout under any break profile.
    [[nodiscard]] const layout::Layout& layout(std::size_t variant, const text::BreakProfile& profile) const;
    /// The current variant under any break profile. A prepared row may be laid out on any thread. It stays
    /// valid while it is held, even after the project changes.
    [[nodiscard]] std::shared_ptr<const layout::PreparedRow> sharedRow(
        const text::BreakProfile& profile) const {
        return made(variant(), profile).row;
    }

Q_SIGNALS:
    void changed(tenter::desktop::LayoutCache::Changes changes);

private:
    /// The prepared row and the layout of one variant under one break profile.
    struct Made {
        std::shared_ptr<const layout::PreparedRow> row;
        layout::Layout layout;
        bool laidOut = false;
    };
    Made& made(std::size_t variant, const text::BreakProfile& profile) const;
    void announce();

    Document& document_;
    const ShownProject& shown_;
    const ViewState& view_;
    mutable int revision_ = 0;  // of the project that the rows were made from
    mutable std::map<std::pair<std::size_t, const text::BreakProfile*>, Made> made_;
    RowKey announcedKey_;
    double announcedWidth_;
};

}  // namespace tenter::desktop
