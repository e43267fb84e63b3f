#include "new_row/understood_view.h"

#include <QHeaderView>

#include "document/wording.h"

namespace tenter::desktop::new_row {

UnderstoodView::UnderstoodView(QWidget* parent) : QTreeWidget(parent) {
    setColumnCount(2);
    setHeaderHidden(true);
    setAccessibleName(QObject::tr("Cards as the text was understood"));
    setUniformRowHeights(true);
    setIndentation(16);
    setTextElideMode(Qt::ElideRight);
    setSelectionMode(NoSelection);
    header()->setStretchLastSection(true);
    header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    setTabKeyNavigation(false);
}

void UnderstoodView::setCards(const std::vector<tenter::start::PastedCard>& cards) {
    clear();
    for (std::size_t i = 0; i < cards.size(); ++i) {
        auto* card = new QTreeWidgetItem(this, {QObject::tr("Card %1").arg(i + 1)});
        QFont strong = font();
        strong.setWeight(QFont::DemiBold);
        card->setFont(0, strong);
        card->setFirstColumnSpanned(true);
        if (!cards[i].alt.empty())
            new QTreeWidgetItem(card, {QObject::tr("Picture"), QString::fromStdString(cards[i].alt)});
        for (const project::TextPart& part : cards[i].parts) {
            const QString text = QString::fromStdString(project::plainText(part.copy)).simplified();
            auto* item = new QTreeWidgetItem(card, {roleTitle(part.role), text});
            item->setForeground(0, palette().color(QPalette::PlaceholderText));
            item->setToolTip(1, text);
        }
    }
    expandAll();
}

}  // namespace tenter::desktop::new_row
