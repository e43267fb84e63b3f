// The folder or the file that an export writes to.
#pragma once

#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

namespace tenter::desktop::exporting {

/// A field for a path, and a button that opens the dialog of the system.
class Destination : public QWidget {
    Q_OBJECT

public:
    enum class Kind { Folder, File };
    /// `filter` is that of a file dialog, such as `PNG (*.png)`; unused for a folder.
    explicit Destination(Kind kind, const QString& filter, QWidget* parent = nullptr);
    [[nodiscard]] QString path() const;
    /// Sets the path without a signal.
    void setPath(const QString& path);
    /// The folder itself, or the folder of the file.
    [[nodiscard]] QString folder() const;
    /// Why nothing can be written there, as a sentence with the way to fix it; empty if it can.
    [[nodiscard]] QString problem() const;

Q_SIGNALS:
    void changed();  ///< by the person

private:
    void choose();

    Kind kind_;
    QString filter_;
    QLineEdit* field_;
    QPushButton* button_;
};

}  // namespace tenter::desktop::exporting
