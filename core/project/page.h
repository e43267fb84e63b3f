// The page that the row is for, as a function of the viewport width.
#pragma once

#include <optional>
#include <vector>

#include "project/settings.h"
#include "units/root_size.h"

namespace tenter::project {

/// The scrollbar of the page.
struct Scrollbar {
    double width = 0;     ///< CSS px; 0: it overlays the page
    bool always = false;  ///< shown even on a short page
    FileKeys fileKeys;
    friend bool operator==(const Scrollbar&, const Scrollbar&) = default;
};

/// A distance to the right; negative: to the left.
struct Shift {
    double percent = 0;  ///< of the width of the page
    double px = 0;
    FileKeys fileKeys;
    friend bool operator==(const Shift&, const Shift&) = default;
    [[nodiscard]] bool isZero() const { return percent == 0 && px == 0; }
};

/// The container of the row; by default the whole page.
struct Container {
    Length width = Length::percent(100);
    Length maxWidth = Length::ofNone();
    double addedWidth = 0;  ///< CSS px, added to the width within its maximum
    ContainerPlace place = ContainerPlace::Center;
    Shift shift;    ///< from that place
    Sides padding;  ///< unset: 0
    Colour background{255, 255, 255, 255};
    FileKeys fileKeys;
    friend bool operator==(const Container&, const Container&) = default;
};

/// What a page range changes of the container; an unset member is that of the page.
struct ContainerChange {
    std::optional<Length> width, maxWidth;
    std::optional<double> addedWidth;
    std::optional<ContainerPlace> place;
    std::optional<Shift> shift;
    Sides padding;
    std::optional<Colour> background;
    FileKeys fileKeys;
    friend bool operator==(const ContainerChange&, const ContainerChange&) = default;
};

/// A range of viewport widths at which the page differs, up to and including `upTo` (CSS px). Only the last
/// one may have no `upTo` and no upper end.
struct PageRange {
    std::optional<double> upTo = {};
    std::optional<units::RootSize> rootSize = {};  ///< unset: that of the page
    ContainerChange container = {};
    FileKeys fileKeys = {};
    friend bool operator==(const PageRange&, const PageRange&) = default;
};

/// The root size and the container at the widths of one page range.
struct PageSettings {
    units::RootSize rootSize;
    Container container;
};

/// The page that the row is for.
struct Page {
    Scrollbar scrollbar;
    units::RootSize rootSize;                    ///< `html { font-size }` of the theme
    double readerSize = units::usualReaderSize;  ///< text size in the browser settings to preview, CSS px
    Container container;
    /// Rising. Wider pages than the last range have the root size and container above.
    std::vector<PageRange> ranges;
    FileKeys fileKeys;
    friend bool operator==(const Page&, const Page&) = default;

    /// The index of the range that contains viewport width `w` (CSS px): the first whose `upTo` is at least
    /// `w`. The number of ranges if none does.
    [[nodiscard]] std::size_t rangeAt(double w) const;
    /// The page in range `range`; for the number of ranges, the page above them.
    [[nodiscard]] PageSettings settings(std::size_t range) const;
    /// The page at viewport width `w` (CSS px).
    [[nodiscard]] PageSettings at(double w) const { return settings(rangeAt(w)); }
};

}  // namespace tenter::project
