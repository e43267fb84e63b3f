// The choice of a variant in an export dialog.
#pragma once

#include <QComboBox>

#include "export/choices.h"
#include "session/session.h"

namespace tenter::desktop::exporting {

/// A list of the variants of the project, and `All variants` if `hasAll`.
class VariantChoice : public QComboBox {
    Q_OBJECT

public:
    explicit VariantChoice(bool hasAll, QWidget* parent = nullptr);
    /// Lists the variants. Chooses what was chosen before, else all, or the variant that the window shows.
    void restore(const Choices& choices, const Session& session);
    void remember(const Choices& choices) const;
    /// The indices of the chosen variants.
    [[nodiscard]] std::vector<std::size_t> variants() const;

private:
    bool hasAll_;
};

}  // namespace tenter::desktop::exporting
