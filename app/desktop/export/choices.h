// The choices of an export, remembered for each project.
#pragma once

#include <QString>
#include <QVariant>
#include <filesystem>

namespace tenter::desktop::exporting {

/// Choices are stored by the path of the project file; those of a project without a file are shared by all
/// such projects.
class Choices {
public:
    Choices(const std::filesystem::path& projectFile, const QString& kind);
    /// The choice `name`, or `fallback` if none was made.
    [[nodiscard]] QVariant value(const QString& name, const QVariant& fallback) const;
    void set(const QString& name, const QVariant& value) const;

private:
    QString group_;
};

}  // namespace tenter::desktop::exporting
