// Opening, saving, and not losing what is unsaved.
#pragma once

#include <QObject>
#include <QStringList>
#include <QWidget>

#include "document/document.h"

namespace tenter::desktop::window {

class FileDesk : public QObject {
    Q_OBJECT

public:
    FileDesk(Document& document, QWidget* window);

    void openAsked();
    void open(const QString& file);
    void openSample(const QString& file);
    /// True if it was saved.
    bool save();
    bool saveAs();
    /// True if nothing unsaved is left, or the person let it go.
    bool mayLeave();
    [[nodiscard]] QStringList recent() const;
    /// What the project is called: its file's name, or its own with a note that it has none.
    [[nodiscard]] QString title() const;
    /// Where a dialog that opens a file starts.
    [[nodiscard]] QString startFolder() const;

signals:
    void recentChanged();
    void failed(const QString& headline, const tenter::project::Problems& problems);
    void done(const QString& what);

private:
    void remember(const std::filesystem::path& file);

    Document& document_;
    QWidget* window_;
};

}  // namespace tenter::desktop::window
