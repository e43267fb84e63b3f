// An editor for the text of a part: plain, strong, emphasis, links, line breaks.
#pragma once

#include <QTextEdit>
#include <functional>

#include "project/project.h"

namespace tenter::desktop::controls {

class CopyEdit : public QTextEdit {
    Q_OBJECT

public:
    explicit CopyEdit(QWidget* parent = nullptr);
    /// Shows `copy`, unless it is shown already.
    void setCopy(const project::Copy& copy);
    [[nodiscard]] project::Copy copyText() const;
    void toggleStrong();
    void toggleEmphasis();
    /// Asks for the link address of the selected words; an empty one removes the link.
    void editLink();
    void breakLine();
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {80, 32}; }

Q_SIGNALS:
    void edited();
    void editingFinished();      ///< the editor has lost the focus
    void focused();              ///< the editor has the focus now
    void moveRequested(int by);  ///< −1: the part moves up, 1: down
    void removeRequested();      ///< the part is to be removed

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void insertFromMimeData(const QMimeData* source) override;
    void resizeEvent(QResizeEvent* event) override;
    /// True while `setCopy` replaces the text.
    [[nodiscard]] bool isFilling() const { return filling_; }
    /// Makes the editor as tall as its text.
    virtual void fitHeight();

private:
    /// The tool that `event` is the shortcut of; empty if none.
    [[nodiscard]] std::function<void()> toolFor(const QKeyEvent& event);
    void toggle(project::Run::Kind kind);
    [[nodiscard]] QTextCharFormat formatOf(const project::Run& run) const;

    bool filling_ = false;
};

}  // namespace tenter::desktop::controls
