#include "row/editing/copy_positions.h"

#include <algorithm>

namespace tenter::desktop::row::editing {

using project::Run;

CopyPositions::CopyPositions(const project::Copy& copy) {
    starts_.reserve(copy.size());
    for (const Run& run : copy) {
        starts_.push_back(static_cast<int>(text_.size()));
        if (run.kind == Run::Kind::Break)
            text_ += QChar::LineSeparator;
        else
            text_ += QString::fromStdString(run.text);
    }
}

int CopyPositions::of(const text::CopyPosition& place) const {
    if (place.run >= starts_.size()) return size();
    return std::min(starts_[place.run] + static_cast<int>(place.unit), size());
}

project::Copy inserted(project::Copy copy, int position, const QString& text) {
    if (text.isEmpty()) return copy;
    int start = 0;
    for (auto run = copy.begin(); run != copy.end(); ++run) {
        const bool isBreak = run->kind == Run::Kind::Break;
        const QString before = isBreak ? QString(QChar::LineSeparator) : QString::fromStdString(run->text);
        const int end = start + static_cast<int>(before.size());
        if (!isBreak && position >= start && position <= end) {
            run->text = QString(before).insert(position - start, text).toStdString();
            return copy;
        }
        if (isBreak && position == start) {
            copy.insert(run, {Run::Kind::Plain, text.toStdString(), {}});
            return copy;
        }
        start = end;
    }
    copy.push_back({Run::Kind::Plain, text.toStdString(), {}});
    return copy;
}

}  // namespace tenter::desktop::row::editing
