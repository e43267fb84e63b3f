#include "page_import/found_table.h"

#include <QHeaderView>
#include <QStringList>
#include <cmath>

#include "document/wording.h"
#include "markup/theme.h"
#include "units/whole_width.h"

namespace tenter::desktop::page_import {

namespace {

QString fromUtf8(const std::string& text) {
    return QString::fromStdString(text);
}

/// `320–767 px, 1024–1920 px`: whole widths; a breakpoint belongs to the range below it.
QString widthsOf(const start::FoundDeclaration& declaration, double least, double most) {
    QStringList ranges;
    for (const auto& [from, upTo] : declaration.widths) {
        if (from <= least && upTo >= most) return {};
        ranges << widthsTitle(from <= least ? from : units::firstWholeWidthAbove(from), std::floor(upTo));
    }
    return ranges.join(", ");
}

}  // namespace

FoundTable::FoundTable(QWidget* parent) : QTreeWidget(parent) {
    setColumnCount(columns);
    setHeaderLabels(
        {QObject::tr("Property"), QObject::tr("Value"), QObject::tr("From rule"), QObject::tr("Widths")});
    setAccessibleName(QObject::tr("Declarations that were read"));
    setUniformRowHeights(true);
    setIndentation(16);
    setAlternatingRowColors(true);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(Property, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(Value, QHeaderView::Stretch);
    header()->setSectionResizeMode(Rule, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(Widths, QHeaderView::ResizeToContents);
    header()->setMaximumSectionSize(360);
}

void FoundTable::setFound(const std::vector<start::FoundElement>& found, double least, double most) {
    clear();
    for (const start::FoundElement& element : found) {
        auto* top = new QTreeWidgetItem(this, {roleTitle(element.role), fromUtf8(element.selector)});
        QFont bold = font();
        bold.setWeight(QFont::DemiBold);
        top->setFont(Property, bold);
        for (const start::FoundDeclaration& declaration : element.declarations) {
            QString value = fromUtf8(declaration.value);
            if (!declaration.computed.empty()) value += " = " + fromUtf8(declaration.computed);
            QString rule = fromUtf8(declaration.place.empty() ? declaration.selector
                                                              : markup::placeInWords(declaration.place));
            if (declaration.selector.empty()) rule = QObject::tr("style attribute");
            if (declaration.inherited) rule = QObject::tr("%1, inherited").arg(rule);
            auto* item = new QTreeWidgetItem(
                top, {fromUtf8(declaration.property), value, rule, widthsOf(declaration, least, most)});
            item->setToolTip(Value, toolTipText(value));
            item->setToolTip(Rule, toolTipText(fromUtf8(declaration.selector)));
        }
        top->setExpanded(true);
    }
}

}  // namespace tenter::desktop::page_import
