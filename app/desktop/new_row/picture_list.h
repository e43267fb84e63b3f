// The pictures of a new row, in the order of its cards.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QWidget>
#include <filesystem>

#include "project/project.h"

namespace tenter::desktop::new_row {

class PictureList : public QWidget {
    Q_OBJECT

public:
    explicit PictureList(QWidget* parent = nullptr);
    /// Adds picture files. A file that cannot be read as a picture is reported and left out.
    void add(const QStringList& files);
    void clear();
    /// The pictures as parts of a project in `folder()`.
    [[nodiscard]] std::vector<project::PicturePart> parts() const;
    /// The folder of the first picture; empty if there are none.
    [[nodiscard]] std::filesystem::path folder() const;
    [[nodiscard]] const QStringList& files() const { return files_; }

Q_SIGNALS:
    void changed();

private:
    void choose();
    void show(const QString& problem);

    QStringList files_;
    QLabel* list_;
    QPushButton* clear_;
};

}  // namespace tenter::desktop::new_row
