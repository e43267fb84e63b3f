#include "document/edit_command.h"

#include <utility>

#include "document/document.h"

namespace tenter::desktop {

namespace {

// QUndoStack asks two commands to merge only if their ids are equal and not −1.
constexpr int gestureId = 1;

}  // namespace

EditCommand::EditCommand(Document& document, const QString& name, Kept before, Kept after, QString gesture,
                         int serial)
    : QUndoCommand(name),
      document_(document),
      before_(std::move(before)),
      after_(std::move(after)),
      gesture_(std::move(gesture)),
      serial_(serial) {}

int EditCommand::id() const {
    return gesture_.isEmpty() ? -1 : gestureId;
}

bool EditCommand::mergeWith(const QUndoCommand* other) {
    if (other->id() != gestureId) return false;
    const auto* next = static_cast<const EditCommand*>(other);
    if (next->gesture_ != gesture_ || next->serial_ != serial_) return false;
    after_ = next->after_;
    // A value that was taken back leaves no step behind.
    setObsolete(*before_ == *after_);
    return true;
}

void EditCommand::undo() {
    document_.put(before_);
}

void EditCommand::redo() {
    document_.put(after_);
}

}  // namespace tenter::desktop
