// An editor for a line of text.
#pragma once

#include <QLineEdit>
#include <functional>

#include "controls/editor.h"

namespace tenter::desktop::controls {

/// Applies as it is typed as long as `accepts` finds nothing wrong; Escape takes back.
class TextEditor : public Editor {
    Q_OBJECT

public:
    /// What is wrong with a text, empty if nothing is.
    using Accepts = std::function<QString(const QString&)>;
    explicit TextEditor(Accepts accepts = {}, QWidget* parent = nullptr);
    void setValue(const Json& value) override;
    [[nodiscard]] Json value() const override;
    void setName(const QString& name) override;
    void setPlaceholder(const QString& text) { field_->setPlaceholderText(text); }

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
