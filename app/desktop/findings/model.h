// List model of the findings, with a filter by severity.
#pragma once

#include <QAbstractListModel>
#include <optional>
#include <vector>

#include "session/check_runner.h"

namespace tenter::desktop::findings {

class Model : public QAbstractListModel {
    Q_OBJECT

public:
    explicit Model(const CheckRunner& checks, QObject* parent = nullptr);

    /// Lists findings of one severity; empty: of all severities.
    void setSeverity(std::optional<checks::Severity> severity);
    [[nodiscard]] std::optional<checks::Severity> severity() const { return severity_; }
    [[nodiscard]] int count(checks::Severity severity) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    /// The finding as text (see `describe`).
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] const checks::Finding& finding(int row) const;
    [[nodiscard]] const CheckRunner& checks() const { return checks_; }
    /// Converts a row to an index into `CheckRunner::findings()`, and back; −1 if the finding is not listed.
    [[nodiscard]] std::size_t indexOf(int row) const { return listed_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] int rowOf(std::size_t index) const;

private:
    void fill();

    const CheckRunner& checks_;
    std::optional<checks::Severity> severity_;
    std::vector<std::size_t> listed_;
    std::vector<checks::Finding> shown_;  // the findings of `listed_`, as the views know them
};

}  // namespace tenter::desktop::findings
