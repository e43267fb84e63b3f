// One step of the undo stack: the project before and after.
#pragma once

#include <QUndoCommand>
#include <memory>

#include "project/project.h"

namespace tenter::desktop {

class Document;

class EditCommand : public QUndoCommand {
public:
    using Kept = std::shared_ptr<const project::Project>;
    /// Steps with the same non-empty `gesture` and `serial` merge.
    EditCommand(Document& document, const QString& name, Kept before, Kept after, QString gesture,
                int serial);

    [[nodiscard]] int id() const override;
    bool mergeWith(const QUndoCommand* other) override;
    void undo() override;
    void redo() override;

private:
    Document& document_;
    Kept before_, after_;
    QString gesture_;
    int serial_;
};

}  // namespace tenter::desktop
