#include "page_import/wording.h"

#include <QObject>
#include <QStringList>
#include <algorithm>

#include "document/wording.h"
#include "project/utf8.h"

namespace tenter::desktop::page_import {

namespace {

constexpr qsizetype mostOwnText = 40;

QString shortened(const QString& text, qsizetype most) {
    const QString words = text.simplified();
    if (words.size() <= most) return words;
    const auto space = words.lastIndexOf(' ', most);
    return words.left(space > most / 2 ? space : most) + QChar(0x2026);
}

QString ownText(const markup::Tree& tree, markup::NodeId node) {
    QString text;
    for (markup::NodeId at = tree[node].firstChild; at != markup::noNode; at = tree[at].next)
        if (tree[at].isText()) text += QString::fromStdString(tree[at].text) + ' ';
    return shortened(text, mostOwnText);
}

}  // namespace

QString elementTitle(const markup::Tree& tree, markup::NodeId node) {
    QString title = QString::fromStdString(tree[node].name);
    if (const std::string* id = tree[node].find("id"); id != nullptr && !id->empty())
        title += " #" + shortened(QString::fromStdString(*id), mostOwnText);
    for (const std::string_view name : tree[node].classes())
        title += " ." + QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    if (const QString own = ownText(tree, node); !own.isEmpty()) title += "  " + QObject::tr("“%1”").arg(own);
    return title;
}

QString firstWords(const markup::Tree& tree, markup::NodeId node, qsizetype most) {
    if (!tree[node].isHtml("img")) return shortened(QString::fromStdString(tree.textOf(node)), most);
    const std::string* alt = tree[node].find("alt");
    const std::string* source = tree[node].find("src");
    if (alt != nullptr && !markup::isBlank(*alt)) return shortened(QString::fromStdString(*alt), most);
    return source == nullptr ? QString() : QString::fromStdString(*source).section('/', -1).left(most);
}

std::string roleOf(const markup::GivenRow& row, markup::NodeId node) {
    for (const markup::RoleNodes& role : row.roles)
        if (std::ranges::find(role.nodes, node) != role.nodes.end()) return role.role;
    return {};
}

QString problemSentence(const project::Problem& problem) {
    return QString::fromStdString(problem.sentence());
}

QString problemSentences(const project::Problems& problems) {
    QStringList lines;
    for (const project::Problem& problem : problems)
        lines << problemSentence(problem);
    return lines.join('\n');
}

QString sizeTitle(qsizetype bytes) {
    return bytes < 1000000 ? figure(static_cast<double>(bytes) / 1000, 1) + "\u00A0kB"
                           : figure(static_cast<double>(bytes) / 1e6, 1) + "\u00A0MB";
}

}  // namespace tenter::desktop::page_import
