#include "panels/classes_line.h"

#include <QClipboard>
#include <QCursor>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QToolTip>
#include <QVBoxLayout>

#include "document/wording.h"
#include "emit/class_names.h"

namespace tenter::desktop::panels {

namespace {

constexpr int shownFor = 4000;  // ms
constexpr QChar wordJoiner(0x2060);

/// `row <a href="walks-trio">.walks-trio</a>, card <a href="walks-card">.walks-card</a>`. No line ends inside
/// a name.
QString linked(const std::vector<emit::ClassName>& names) {
    QStringList all;
    for (const emit::ClassName& one : names) {
        const QString name = QString::fromStdString(one.name).toHtmlEscaped();
        all << QString("%1&nbsp;<a href=\"%2\">.%3</a>")
                   .arg(roleName(one.element).toHtmlEscaped(), name,
                        QString(name).replace('-', QString("-") + wordJoiner));
    }
    return all.join(", ");
}

}  // namespace

ClassesLine::ClassesLine(QWidget* parent)
    : QWidget(parent),
      title_(new QLabel(QObject::tr("Classes for the elements of your page"), this)),
      classes_(new QLabel(this)),
      copy_(new QPushButton(QObject::tr("Copy"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 4, 24, 4);
    box->setSpacing(4);
    title_->setForegroundRole(QPalette::PlaceholderText);
    title_->setToolTip(toolTipText(QObject::tr(
        "The stylesheet reaches only elements with these classes. Enter them in your CMS, or copy "
        "the markup (Export › Copy markup), which has them.")));
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(title_, 1);
    head->addWidget(copy_);
    box->addLayout(head);
    box->addWidget(classes_);
    title_->setWordWrap(true);
    classes_->setWordWrap(true);
    classes_->setTextFormat(Qt::RichText);
    // Not selectable, because a copied name would have word joiners.
    classes_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    classes_->setAccessibleName(QObject::tr("Classes for the elements of your page"));
    classes_->setToolTip(QObject::tr("Click a class to copy it without the dot"));
    copy_->setAccessibleName(QObject::tr("Copy class names"));
    connect(copy_, &QPushButton::clicked, this,
            [this] { copy(line_ + '\n', QObject::tr("Class names copied: %1").arg(line_), copy_); });
    connect(classes_, &QLabel::linkActivated, this, [this](const QString& name) {
        copy(name, QObject::tr("Class name copied: %1").arg(name), classes_);
    });
}

void ClassesLine::showClasses(const project::Project& project, std::size_t variant) {
    setVisible(!project.row().given);
    if (project.row().given) return;
    const std::size_t shown = std::min(variant, project.row().variants.size() - 1);
    line_ = QString::fromStdString(emit::classLine(project, shown));
    const QString links = linked(emit::classNames(project, shown));
    if (classes_->text() == links) return;
    classes_->setText(links);
    classes_->setAccessibleDescription(line_);
}

void ClassesLine::copy(const QString& text, const QString& message, QWidget* near) {
    QGuiApplication::clipboard()->setText(text);
    Q_EMIT copied(message);
    QToolTip::showText(near->mapToGlobal(QPoint(0, near->height() - 8)), message, near, {}, shownFor);
}

}  // namespace tenter::desktop::panels
