// The list of findings; a class of its own, so that assistive technology gets what a row can do.
#pragma once

#include <QListView>

namespace tenter::desktop::findings {

class List : public QListView {
    Q_OBJECT

public:
    using QListView::QListView;

    /// Makes the row current, which shows its details, and activates it: the view goes to its width.
    void open(const QModelIndex& index) {
        setCurrentIndex(index);
        Q_EMIT activated(index);
    }
};

}  // namespace tenter::desktop::findings
