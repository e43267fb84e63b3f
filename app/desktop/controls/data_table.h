// Data that a drawing shows, as a table for people who do not see it.
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

namespace tenter::desktop::controls {

struct DataTable {
    QStringList heads;
    QList<QStringList> rows;  ///< each with as many cells as there are heads
    friend bool operator==(const DataTable&, const DataTable&) = default;
};

/// A widget that draws data derives from it.
class HasData {
public:
    HasData() = default;
    virtual ~HasData() = default;
    HasData(const HasData&) = delete;
    HasData& operator=(const HasData&) = delete;
    /// The data of the current state.
    [[nodiscard]] virtual DataTable data() const = 0;
};

}  // namespace tenter::desktop::controls
