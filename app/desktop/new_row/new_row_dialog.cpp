#include "new_row/new_row_dialog.h"

#include <QDragEnterEvent>
#include <QFile>
#include <QFileInfo>
#include <QFormLayout>
#include <QGridLayout>
#include <QImageReader>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>
#include <array>

#include "controls/dialog_foot.h"
#include "controls/inks.h"
#include "document/wording.h"
#include "start/example_text.h"
#include "start/language.h"
#include "start/looks.h"

namespace tenter::desktop::new_row {

namespace {

constexpr std::array<int, 3> previewWidths{1280, 800, 360};  // viewport, CSS px

QLabel* title(const QString& text, QWidget* parent, QWidget* buddy = nullptr) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
    if (buddy != nullptr) label->setBuddy(buddy);
    return label;
}

QVBoxLayout* columnIn(QWidget* widget, int left, int right) {
    auto* box = new QVBoxLayout(widget);
    box->setContentsMargins(left, 0, right, 0);
    box->setSpacing(8);
    return box;
}

}  // namespace

NewRowDialog::NewRowDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(QObject::tr("New row"));
    setWindowModality(Qt::WindowModal);
    setAcceptDrops(true);
    resize(1184, 696);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->addWidget(buildChoices());
    across->addWidget(buildText());
    across->addWidget(buildPreview());
    across->setChildrenCollapsible(false);
    across->setStretchFactor(0, 0);
    across->setStretchFactor(1, 1);
    across->setStretchFactor(2, 1);
    across->setSizes({336, 336, 464});
    box->addWidget(across, 1);
    box->addLayout(buildFoot());
    connect(&maker_, &RowMaker::finished, this, &NewRowDialog::showResult);
    connect(&maker_, &RowMaker::lookPainted, this, [this](const QString& look, const QImage& image) {
        for (QAbstractButton* tile : looks_->buttons())
            if (tile->objectName() == look) static_cast<LookTile*>(tile)->setImage(image);
    });
}

QWidget* NewRowDialog::buildChoices() {
    auto* choices = new QWidget(this);
    auto* box = columnIn(choices, 0, 16);
    columns_ = new controls::Segments(choices);
    QStringList counts;
    QStringList names;
    for (int i = 1; i <= tenter::start::mostNewColumns; ++i) {
        counts << QString::number(i);
        names << columnsTitle(i);
    }
    columns_->setTexts(counts, names);
    columns_->setCurrent(2);
    columns_->setFilling(true);
    box->addWidget(title(QObject::tr("Columns on wide screens"), choices));
    box->addWidget(columns_);
    box->addSpacing(8);
    box->addWidget(title(QObject::tr("Look"), choices));
    auto* grid = new QGridLayout;
    grid->setSpacing(8);
    looks_ = new QButtonGroup(this);
    int index = 0;
    for (const tenter::start::Look& look : tenter::start::looks()) {
        auto* tile = new LookTile(QString::fromStdString(look.title),
                                  QString::fromStdString(look.description), choices);
        tile->setObjectName(QString::fromStdString(look.name));
        tile->setChecked(index == 0);
        looks_->addButton(tile);
        grid->addWidget(tile, index / 2, index % 2);
        ++index;
    }
    grid->setColumnStretch(2, 1);
    box->addLayout(grid);
    box->addSpacing(8);
    language_ = new QComboBox(choices);
    language_->setAccessibleName(QObject::tr("Language"));
    language_->addItem(QObject::tr("As the text"), QString());
    for (const tenter::start::LanguageName& one : tenter::start::commonLanguages())
        language_->addItem(QString::fromStdString(one.name), QString::fromStdString(one.tag));
    direction_ = new QComboBox(choices);
    direction_->setAccessibleName(QObject::tr("Direction"));
    direction_->addItems(
        {QObject::tr("As the language"), QObject::tr("Left to right"), QObject::tr("Right to left")});
    name_ = new QLineEdit(choices);
    name_->setAccessibleName(QObject::tr("Name"));
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(16);
    form->setVerticalSpacing(8);
    form->addRow(QObject::tr("&Language"), language_);
    form->addRow(QObject::tr("&Direction"), direction_);
    form->addRow(QObject::tr("&Name"), name_);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    box->addLayout(form);
    box->addStretch(1);
    connect(columns_, &controls::Segments::chosen, this, &NewRowDialog::refresh);
    connect(looks_, &QButtonGroup::buttonClicked, this, &NewRowDialog::refresh);
    connect(language_, &QComboBox::activated, this, &NewRowDialog::refresh);
    connect(direction_, &QComboBox::activated, this, &NewRowDialog::refresh);
    connect(name_, &QLineEdit::textChanged, this, &NewRowDialog::refresh);
    return choices;
}

QWidget* NewRowDialog::buildText() {
    auto* side = new QWidget(this);
    auto* box = columnIn(side, 8, 16);
    text_ = new TextBox(side);
    format_ = new QComboBox(side);
    format_->setAccessibleName(QObject::tr("Format of the text"));
    format_->setMinimumWidth(144);
    format_->addItems({QObject::tr("Guess format"), QObject::tr("Plain lines"), QObject::tr("Markdown"),
                       QObject::tr("HTML"), QObject::tr("Table")});
    auto* head = new QHBoxLayout;
    head->addWidget(title(QObject::tr("&Text"), side, text_), 1);
    head->addWidget(format_);
    box->addLayout(head);
    box->addWidget(text_, 1);
    box->addSpacing(8);
    box->addWidget(title(QObject::tr("Pictures"), side));
    pictures_ = new PictureList(side);
    box->addWidget(pictures_);
    connect(text_, &QPlainTextEdit::textChanged, this, &NewRowDialog::refresh);
    connect(text_, &TextBox::filesInserted, this, &NewRowDialog::addFiles);
    connect(format_, &QComboBox::activated, this, &NewRowDialog::refresh);
    connect(pictures_, &PictureList::changed, this, &NewRowDialog::refresh);
    return side;
}

QWidget* NewRowDialog::buildPreview() {
    auto* side = new QWidget(this);
    auto* box = columnIn(side, 8, 0);
    widths_ = new controls::Segments(side);
    QStringList texts;
    QStringList names;
    for (const int width : previewWidths) {
        texts << QObject::tr("%1\u00A0px").arg(width);
        names << QObject::tr("Preview at a viewport width of %1\u00A0px").arg(width);
    }
    widths_->setTexts(texts, names);
    widths_->setCurrent(0);
    auto* head = new QHBoxLayout;
    head->addWidget(title(QObject::tr("Preview"), side), 1);
    head->addWidget(widths_);
    image_ = new QLabel(side);
    image_->setAlignment(Qt::AlignTop | Qt::AlignHCenter);
    image_->setFrameShape(QFrame::StyledPanel);
    image_->setAccessibleName(QObject::tr("Preview of the row"));
    image_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    image_->setMinimumSize(240, 160);
    image_->installEventFilter(this);
    notes_ = new QLabel(side);
    notes_->setWordWrap(true);
    notes_->setTextFormat(Qt::PlainText);
    notes_->setAccessibleName(QObject::tr("What to check"));
    understood_ = new UnderstoodView(side);
    box->addLayout(head);
    box->addWidget(image_, 3);
    box->addSpacing(8);
    box->addWidget(title(QObject::tr("&Cards that Tenter finds in the text"), side, understood_));
    box->addWidget(understood_, 2);
    box->addWidget(notes_);
    connect(widths_, &controls::Segments::chosen, this, &NewRowDialog::refresh);
    return side;
}

QLayout* NewRowDialog::buildFoot() {
    const controls::DialogFoot foot = controls::dialogFoot(
        this, QObject::tr("Create &row"), QObject::tr("Create the row (Ctrl+Enter)"), [this] { create(); });
    foot.hint->setText(QObject::tr(
        "Tenter sets breakpoints, font sizes and spacing. You can change everything afterwards."));
    create_ = foot.action;
    return foot.layout;
}

// The preview fills its frame, whose height changes with the notes below it.
bool NewRowDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched == image_ && event->type() == QEvent::Resize) refresh();
    return QDialog::eventFilter(watched, event);
}

QString NewRowDialog::lookName() const {
    const QAbstractButton* tile = looks_->checkedButton();
    return tile == nullptr ? QString() : tile->objectName();
}

void NewRowDialog::refresh() {
    if (!isVisible()) return;
    RowRequest request;
    request.row.columns = columns_->current() + 1;
    request.row.look = lookName().toStdString();
    request.row.language = language_->currentData().toString().toStdString();
    if (direction_->currentIndex() > 0) request.row.rightToLeft = direction_->currentIndex() == 2;
    request.row.name = name_->text().trimmed().toStdString();
    request.row.pictures = pictures_->parts();
    request.folder = pictures_->folder();
    request.text = text_->toPlainText().toStdString();
    if (format_->currentIndex() > 0)
        request.format = static_cast<tenter::start::TextFormat>(format_->currentIndex() - 1);
    const int width = previewWidths[static_cast<std::size_t>(std::max(widths_->current(), 0))];
    const double ratio = devicePixelRatioF();
    const QSize room = image_->contentsRect().size();
    request.width = width;
    request.size = QSizeF(std::min(room.width(), width) * ratio, room.height() * ratio).toSize();
    maker_.request(request, QSizeF(LookTile::imageWidth * ratio, LookTile::imageHeight * ratio).toSize());
}

void NewRowDialog::showResult(const RowResult& result) {
    QPixmap shown = QPixmap::fromImage(result.image);
    shown.setDevicePixelRatio(devicePixelRatioF());
    image_->setPixmap(shown);
    const project::Project& project = result.made.project;
    const bool isExample = result.text.cards.empty();
    understood_->setCards(isExample
                              ? tenter::start::exampleText(project.row().cards.size(), project.language).cards
                              : result.text.cards);
    QStringList notes;
    for (const std::string& note : result.made.notes)
        notes << QString::fromStdString(note);
    QPalette ink = palette();
    ink.setColor(QPalette::WindowText, isExample ? controls::quiet(ink) : controls::caution(ink));
    notes_->setPalette(ink);
    notes_->setText(notes.join('\n'));
    notes_->setVisible(!notes.isEmpty());
    name_->setPlaceholderText(QString::fromStdString(project.name));
}

void NewRowDialog::create() {
    const RowResult& result = maker_.result();
    const project::Project project = result.made.project;
    const std::size_t cards = project.row().cards.size();
    QString message =
        QObject::tr("New row with %n card(s). Save it to keep it.", nullptr, static_cast<int>(cards));
    const std::filesystem::path folder = pictures_->folder();
    accept();
    Q_EMIT created(project, folder, message);
}

void NewRowDialog::addFiles(const QStringList& files) {
    QStringList pictures;
    for (const QString& file : files) {
        if (!QImageReader::imageFormat(file).isEmpty()) {
            pictures << file;
            continue;
        }
        QFile text(file);
        static const QStringList endings{"txt", "md", "markdown", "csv", "tsv", "html", "htm"};
        if (endings.contains(QFileInfo(file).suffix().toLower()) && text.open(QIODevice::ReadOnly))
            text_->setPlainText(
                QString::fromUtf8(text.read(static_cast<qint64>(tenter::start::longestPaste))));
        else
            pictures << file;  // is reported as no picture
    }
    if (!pictures.isEmpty()) pictures_->add(pictures);
}

void NewRowDialog::reset() {
    text_->clear();
    name_->clear();
    pictures_->clear();
    language_->setCurrentIndex(0);
    direction_->setCurrentIndex(0);
    format_->setCurrentIndex(0);
}

void NewRowDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    text_->setFocus();
    refresh();
}

void NewRowDialog::resizeEvent(QResizeEvent* event) {
    QDialog::resizeEvent(event);
    // After the layout.
    QMetaObject::invokeMethod(this, &NewRowDialog::refresh, Qt::QueuedConnection);
}

void NewRowDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void NewRowDialog::dropEvent(QDropEvent* event) {
    QStringList files;
    for (const QUrl& url : event->mimeData()->urls())
        if (url.isLocalFile()) files << url.toLocalFile();
    if (files.isEmpty()) return;
    event->acceptProposedAction();
    addFiles(files);
}

}  // namespace tenter::desktop::new_row
