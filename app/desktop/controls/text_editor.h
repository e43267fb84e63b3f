// An editor for a line of text.
#pragma once

#include <QLineEdit>
#include <functional>

#include "controls/editor.h"

namespace tenter::desktop::controls {

/// Applies the text while it is typed, as long as it is valid. Escape restores the text from before.
class TextEditor : public Editor {
    Q_OBJECT

public:
    /// Returns what must be entered instead of an invalid text; empty for a valid one.
    using Accepts = std::function<QString(const QString&)>;
    explicit TextEditor(Accepts accepts = {}, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    void setName(const QString& name) override;
    void setPlaceholder(const QString& text) { field_->setPlaceholderText(text); }

Q_SIGNALS:
    void focused();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void typed();
    void commit();

    Accepts accepts_;
    QLineEdit* field_;
    QString value_, start_;
    bool touched_ = false;
};

}  // namespace tenter::desktop::controls
