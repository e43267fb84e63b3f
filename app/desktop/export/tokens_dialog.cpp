#include "export/tokens_dialog.h"

#include "emit/tokens.h"

namespace tenter::desktop::exporting {

TokensDialog::TokensDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"tokens", QObject::tr("Export design tokens"), QObject::tr("Write design tokens"),
           QObject::tr(
               "Writes sizes, typography, spacing and colours as JSON, in the Design Tokens Format 2025.10, "
               "for design programs and style guides."),
           QObject::tr("Content"), Destination::Kind::File, QObject::tr("Design tokens (*.tokens.json)")},
          parent),
      variant_(new VariantChoice(true, this)),
      unit_(new controls::Segments(this)) {
    unit_->setTexts({"px", "rem"},
                    {QObject::tr("Dimensions in px"), QObject::tr("Dimensions in rem: multiples of 16 px")});
    options()->addRow(QObject::tr("&Variant"), variant_);
    options()->addRow(QObject::tr("Unit"), unit_);
    connect(variant_, &QComboBox::activated, this, &TokensDialog::replan);
    connect(unit_, &controls::Segments::chosen, this, &TokensDialog::replan);
}

QString TokensDialog::usualDestination() const {
    return projectFolder() + "/" + projectName() + ".tokens.json";
}

void TokensDialog::restore(const Choices& choices) {
    variant_->restore(choices, session());
    unit_->setCurrent(choices.value("unit", "px").toString() == "rem" ? 1 : 0);
}

void TokensDialog::remember(const Choices& choices) const {
    variant_->remember(choices);
    choices.set("unit", unit_->current() == 1 ? "rem" : "px");
}

ContentMaker TokensDialog::content() const {
    return [project = session().document.project(), variants = variant_->variants(),
            unit = unit_->current() == 1 ? units::Unit::Rem : units::Unit::Px] {
        FileContent out;
        out.text = emit::tokens(project, {variants, unit});
        const auto count = QString::fromStdString(*out.text).count("\"$value\"");
        out.about = QObject::tr("%n token(s)", nullptr, static_cast<int>(count));
        return out;
    };
}

Planner TokensDialog::planner() const {
    return filePlanner(destination().path(), content());
}

Writer TokensDialog::writer() const {
    return fileWriter(destination().path(), content());
}

}  // namespace tenter::desktop::exporting
