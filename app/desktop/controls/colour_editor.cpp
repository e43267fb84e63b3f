#include "controls/colour_editor.h"

#include <QColorDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

namespace tenter::desktop::controls {

namespace {

QString hexadecimal() {
    return QObject::tr("Enter #rgb, #rrggbb, #rrggbbaa (aa is the opacity) or transparent");
}

QColor toQt(const units::Colour& colour) {
    return {colour.red, colour.green, colour.blue, colour.alpha};
}

units::Colour fromQt(const QColor& colour) {
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue()), static_cast<std::uint8_t>(colour.alpha())};
}

class Swatch : public QAbstractButton {
public:
    explicit Swatch(QWidget* parent) : QAbstractButton(parent) { setFixedSize(28, 28); }
    void setColour(const QColor& colour) {
        colour_ = colour;
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const QRect box = rect().adjusted(2, 2, -3, -3);
        if (colour_.alpha() < 255) {
            painter.fillRect(box, Qt::white);
            painter.fillRect(box, QBrush(QColor(0, 0, 0, 60), Qt::Dense4Pattern));
        }
        painter.fillRect(box, colour_);
        painter.setPen(palette().color(QPalette::Mid));
        painter.drawRect(box);
        if (hasFocus()) {
            painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
            painter.drawRect(rect().adjusted(1, 1, -1, -1));
        }
    }

private:
    QColor colour_;
};

}  // namespace

ColourEditor::ColourEditor(QWidget* parent)
    : Editor(parent), swatch_(new Swatch(this)), field_(new QLineEdit(this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    box->addWidget(swatch_);
    box->addWidget(field_, 1);
    setFocusProxy(field_);
    field_->setToolTip(hexadecimal());
    field_->setMaxLength(12);
    field_->setMinimumWidth(48);
    field_->installEventFilter(this);
    connect(field_, &QLineEdit::textEdited, this, &ColourEditor::typed);
    connect(field_, &QLineEdit::editingFinished, this, &ColourEditor::commit);
    connect(swatch_, &QAbstractButton::clicked, this, &ColourEditor::choose);
}

void ColourEditor::setValue(const Json& value) {
    const auto colour = value.is_string() ? units::Colour::parse(value.get<std::string>()) : std::nullopt;
    colour_ = colour.value_or(units::Colour{0, 0, 0, 0});
    display(colour_);
}

Json ColourEditor::value() const {
    return colour_.css();
}

QString ColourEditor::accepts() const {
    return hexadecimal() + '.';
}

void ColourEditor::setName(const QString& name) {
    name_ = name;
    field_->setAccessibleName(name);
    swatch_->setAccessibleName(QObject::tr("%1, choose", "button beside the field of a colour").arg(name));
    swatch_->setToolTip(QObject::tr("Choose colour"));
}

bool ColourEditor::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) {
        start_ = colour_;
        touched_ = false;
    }
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        // Undo acts on the document, also while typing.
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) return true;
    }
    if (event->type() == QEvent::KeyPress && touched_ &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        touched_ = false;
        colour_ = start_;
        field_->setText(QString::fromStdString(colour_.css()));
        field_->selectAll();
        Q_EMIT reverted();
        return true;
    }
    return Editor::eventFilter(watched, event);
}

void ColourEditor::typed() {
    touched_ = true;
    const QString text = field_->text().trimmed().toLower();
    const auto colour = units::Colour::parse(text.toStdString());
    if (!colour) return;
    // "#123" may be the start of "#123456".
    if (text.startsWith('#') && text.size() < 7) return;
    colour_ = *colour;
    display(colour_);
    Q_EMIT edited();
}

void ColourEditor::commit() {
    if (!touched_) return;
    touched_ = false;
    const QString text = field_->text().trimmed().toLower();
    if (text.isEmpty()) {
        Q_EMIT cleared();
    } else if (auto colour = units::Colour::parse((text.startsWith('#') ? text : "#" + text).toStdString());
               colour || (colour = units::Colour::parse(text.toStdString()))) {
        if (*colour != colour_) {
            colour_ = *colour;
            Q_EMIT edited();
        }
    } else {
        Q_EMIT rejected(QObject::tr("enter #rgb, #rrggbb, #rrggbbaa or transparent; the value stays %1")
                            .arg(QString::fromStdString(colour_.css())));
    }
    field_->setText(QString::fromStdString(colour_.css()));
    display(colour_);
    Q_EMIT finished();
}

void ColourEditor::choose() {
    const units::Colour before = colour_;
    QColorDialog dialog(toQt(colour_), this);
    dialog.setWindowTitle(name_);
    dialog.setOptions(QColorDialog::ShowAlphaChannel | QColorDialog::DontUseNativeDialog);
    connect(&dialog, &QColorDialog::currentColorChanged, this, [this](const QColor& colour) {
        colour_ = fromQt(colour);
        display(colour_);
        Q_EMIT edited();
    });
    if (dialog.exec() != QDialog::Accepted) {
        colour_ = before;
        display(colour_);
        start_ = before;
        Q_EMIT reverted();
    }
    Q_EMIT finished();
}

void ColourEditor::display(const units::Colour& colour) {
    static_cast<Swatch*>(swatch_)->setColour(toQt(colour));
    if (!(field_->hasFocus() && touched_)) field_->setText(QString::fromStdString(colour.css()));
}

}  // namespace tenter::desktop::controls
