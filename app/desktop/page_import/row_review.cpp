#include "page_import/row_review.h"

#include <QFontDatabase>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>

#include "markup/theme.h"
#include "page_import/row_reader.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

namespace {

constexpr int mostExpanded = 800;  // nodes

}  // namespace

RowReview::RowReview(QWidget* parent)
    : QWidget(parent),
      model_(new ElementModel(this)),
      tree_(new QTreeView(this)),
      drawing_(new CardDrawing(this)),
      bar_(new RoleBar(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(8, 0, 0, 0);
    box->setSpacing(16);
    tree_->setModel(model_);
    tree_->setHeaderHidden(true);
    tree_->setUniformRowHeights(true);
    tree_->setIndentation(16);
    tree_->setAccessibleName(QObject::tr("Elements of the row"));
    tree_->header()->setStretchLastSection(false);
    tree_->header()->setSectionResizeMode(ElementModel::Element, QHeaderView::Stretch);
    tree_->header()->setSectionResizeMode(ElementModel::Role, QHeaderView::ResizeToContents);
    auto* drawn = new QWidget(this);
    auto* drawnBox = new QVBoxLayout(drawn);
    drawnBox->setContentsMargins(8, 0, 0, 0);
    drawnBox->addWidget(drawing_);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->addWidget(tree_);
    across->addWidget(drawn);
    across->setChildrenCollapsible(false);
    across->setStretchFactor(0, 1);
    across->setStretchFactor(1, 1);
    across->setSizes({360, 400});
    box->addWidget(across, 1);
    box->addWidget(bar_);
    box->addWidget(buildTheme());
    connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& index) { select(ElementModel::nodeOf(index)); });
    connect(drawing_, &CardDrawing::chosen, this, &RowReview::select);
}

QWidget* RowReview::buildTheme() {
    auto* theme = new QWidget(this);
    auto* box = new QVBoxLayout(theme);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    themeTitle_ = new QToolButton(theme);
    themeTitle_->setObjectName("theme");
    themeTitle_->setCheckable(true);
    themeTitle_->setAutoRaise(true);
    themeTitle_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    theme_ = new QPlainTextEdit(theme);
    theme_->setTabChangesFocus(true);
    theme_->setAccessibleName(QObject::tr("Theme CSS that applies to the row"));
    theme_->setPlaceholderText(
        QObject::tr("Paste the CSS of the page’s theme, or write the rules that apply to the row, such as:\n"
                    "html { font-size: 62.5% }  a { color: #064; text-decoration: underline }"));
    QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    fixed.setPointSizeF(font().pointSizeF());
    theme_->setFont(fixed);
    theme_->setLineWrapMode(QPlainTextEdit::NoWrap);
    theme_->setFixedHeight(144);
    box->addWidget(themeTitle_, 0, Qt::AlignLeft);
    box->addWidget(theme_);
    connect(themeTitle_, &QToolButton::toggled, this, &RowReview::showTheme);
    connect(theme_, &QPlainTextEdit::textChanged, this, [this] {
        if (!theme_->isReadOnly()) Q_EMIT themeTyped(theme_->toPlainText());
    });
    return theme;
}

void RowReview::setResult(const ImportResult& result, const std::vector<std::string>& roles,
                          const std::optional<std::string>& typedTheme) {
    result_ = &result;
    typedTheme_ = typedTheme;
    const markup::GivenRow* row = result.row ? &*result.row : nullptr;
    const markup::NodeId wanted = node_;
    node_ = markup::noNode;
    model_->setRow(row);
    drawing_->setRow(row);
    bar_->setRoles(roles);
    showTheme();
    if (row == nullptr) {
        bar_->showElement(nullptr, markup::noNode);
        return;
    }
    if (row->tree.size() <= mostExpanded)
        tree_->expandAll();
    else
        tree_->expandToDepth(static_cast<int>(row->tree.between(0, row->row).size()) + 1);
    // The column was measured by the rows that were visible before.
    tree_->header()->setSectionResizeMode(ElementModel::Role, QHeaderView::ResizeToContents);
    const bool stands = wanted < row->tree.size() && !row->tree[wanted].isText() &&
                        row->tree.isWithin(wanted, row->tree.body());
    select(stands ? wanted : row->cards.front().node);
}

QString RowReview::themeNow() const {
    if (typedTheme_) return QString::fromStdString(*typedTheme_);
    if (result_ == nullptr || !result_->adopted) return {};
    // A project that was made from a stylesheet alone has no given markup.
    const std::optional<project::Given>& given = result_->adopted->project.row().given;
    return given ? QString::fromStdString(markup::withPlacesInWords(given->theme.str())) : QString();
}

void RowReview::showTheme() {
    QString css = themeNow();
    const bool open = themeTitle_->isChecked();
    themeTitle_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    themeTitle_->setText(
        css.isEmpty() ? QObject::tr("Theme CSS that applies to the row: none yet. Paste or write it here")
                      : (typedTheme_ ? QObject::tr("Theme CSS that applies to the row, %1, typed by you")
                                     : QObject::tr("Theme CSS that applies to the row, %1"))
                            .arg(sizeTitle(css.toUtf8().size())));
    theme_->setVisible(open);
    // CSS too large to edit is shown up to the limit, read-only.
    theme_->setReadOnly(css.size() > largePage);
    if (theme_->isReadOnly()) css = css.left(largePage) + QChar(0x2026);
    if (!open || theme_->toPlainText() == css) return;
    const QSignalBlocker quiet(theme_);
    theme_->setPlainText(css);
}

void RowReview::select(markup::NodeId node) {
    if (result_ == nullptr || !result_->row || node == node_ || node >= result_->row->tree.size()) return;
    node_ = node;
    const QModelIndex index = model_->indexOf(node);
    if (tree_->currentIndex().siblingAtColumn(0) != index) tree_->setCurrentIndex(index);
    tree_->scrollTo(index);
    drawing_->setCurrent(node);
    bar_->showElement(&*result_->row, node);
}

}  // namespace tenter::desktop::page_import
