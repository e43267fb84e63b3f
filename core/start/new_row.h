// A new project: columns, a look, a language, text and pictures.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "project/project.h"
#include "start/pasted_text.h"
#include "text/paragraph_store.h"

namespace tenter::start {

/// The largest number of columns of a new row. In more, cards are too narrow for their text on most screens.
inline constexpr int mostNewColumns = 6;

/// What a new row is made of.
struct NewRow {
    int columns = 3;                             ///< in the widest band, 1 to `mostNewColumns`
    std::string look;                            ///< its name; empty or unknown: the first look
    std::string language;                        ///< BCP 47; empty: that of the text
    std::optional<bool> rightToLeft;             ///< unset: the direction of the language
    std::string name;                            ///< of the project; empty: made from the text
    PastedText text;                             ///< without cards: example text
    std::vector<project::PicturePart> pictures;  ///< one for each card, in their order
    friend bool operator==(const NewRow&, const NewRow&) = default;
};

struct MadeRow {
    project::Project project;
    std::vector<std::string> notes;  ///< what the person should check, one or two sentences each
    bool isCancelled = false;        ///< the work was stopped; nothing else is set
};

/// The project. It has a variant with a band for each step of columns, sizes that satisfy its wishes at every
/// width, and the wishes, relaxed where the text makes that necessary. Its files are those of `pictures`.
/// Valid for every input. Stops soon after a request of `cancellation`.
MadeRow newRow(const NewRow& row, text::ParagraphStore& store, const std::stop_token& cancellation = {});

/// A name for the row's classes from the name of the project: `shore-walks`; `cards` if it has no Latin
/// letters.
std::string rowNameOf(const std::string& projectName);

}  // namespace tenter::start
