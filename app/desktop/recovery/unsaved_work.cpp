#include "recovery/unsaved_work.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <algorithm>
#include <nlohmann/json.hpp>

#include "checks/registry.h"
#include "project/file.h"

namespace tenter::desktop::recovery {

namespace {

using nlohmann::json;

constexpr int version = 1;
constexpr const char* format = "tenter-recovery";
constexpr qint64 largest = 256LL << 20U;  // bytes

std::unique_ptr<QLockFile> lockFor(const QString& recoveryFile) {
    auto lock = std::make_unique<QLockFile>(lockOf(recoveryFile));
    // A lock is stale only if its process runs no more.
    lock->setStaleLockTime(0);
    return lock;
}

std::string textAt(const json& head, const char* key) {
    const auto at = head.find(key);
    return at != head.end() && at->is_string() ? at->get<std::string>() : std::string();
}

}  // namespace

QString stateFolder() {
    const QString set = qEnvironmentVariable("XDG_STATE_HOME");
    // A relative path is invalid and to be ignored.
    return (QDir::isAbsolutePath(set) ? set : QDir::homePath() + "/.local/state") + "/tenter";
}

std::string recoveryText(const UnsavedWork& work) {
    const json head{{"format", format},
                    {"version", version},
                    {"file", work.file.string()},
                    {"folder", work.folder.string()},
                    {"time", work.time.toUTC().toString(Qt::ISODateWithMs).toStdString()}};
    return head.dump(-1, ' ', false, json::error_handler_t::replace) + "\n" + project::write(work.project);
}

std::optional<UnsavedWork> readRecovery(const QString& file, project::Problems& problems) {
    const auto refuse = [&](const QString& what) {
        problems.push_back({file.toStdString(), "", what.toStdString(),
                            QObject::tr("Open the project file instead.").toStdString()});
        return std::nullopt;
    };
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) return refuse(QObject::tr("The recovery file cannot be read."));
    if (in.size() > largest) return refuse(QObject::tr("The recovery file is too large."));
    const std::string text = in.readAll().toStdString();
    const std::size_t end = text.find('\n');
    const json head = json::parse(text.substr(0, end), nullptr, false);
    if (end == std::string::npos || !head.is_object() || textAt(head, "format") != format)
        return refuse(QObject::tr("This is no recovery file."));
    UnsavedWork work;
    work.file = textAt(head, "file");
    work.folder = textAt(head, "folder");
    work.time = QDateTime::fromString(QString::fromStdString(textAt(head, "time")), Qt::ISODateWithMs);
    // Its pictures may be missing by now; the row shows that.
    auto project =
        project::parse(text.substr(end + 1), file.toStdString(), {}, problems, checks::isCheckName);
    if (!project) return std::nullopt;
    work.project = std::move(*project);
    return work;
}

QString lockOf(const QString& recoveryFile) {
    return recoveryFile + ".lock";
}

std::vector<Leftover> leftovers(const QString& folder) {
    std::vector<Leftover> found;
    for (const QFileInfo& info : QDir(folder).entryInfoList({"*.recovery"}, QDir::Files)) {
        auto lock = lockFor(info.filePath());
        if (!lock->tryLock(0)) continue;
        project::Problems problems;
        if (auto work = readRecovery(info.filePath(), problems))
            found.push_back({info.filePath(), std::move(*work), std::move(lock)});
    }
    std::ranges::sort(found, std::greater(), [](const Leftover& one) { return one.work.time; });
    return found;
}

}  // namespace tenter::desktop::recovery
