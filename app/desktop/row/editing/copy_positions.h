// Positions in a text as an editor counts them: UTF-16 code units from its start, 1 for a line break.
#pragma once

#include <QString>
#include <vector>

#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::desktop::row::editing {

class CopyPositions {
public:
    explicit CopyPositions(const project::Copy& copy);
    /// The characters of all runs; U+2028 for a line break.
    [[nodiscard]] const QString& text() const { return text_; }
    [[nodiscard]] int size() const { return static_cast<int>(text_.size()); }
    [[nodiscard]] int of(const text::CopyPosition& place) const;

private:
    QString text_;
    std::vector<int> starts_;  // of each run
};

/// `copy` with `text` inserted at `position`, in the run that ends or is there.
project::Copy inserted(project::Copy copy, int position, const QString& text);

}  // namespace tenter::desktop::row::editing
