#include "panels/binding.h"

#include <utility>

#include "document/wording.h"
#include "panels/computed.h"
#include "panels/row_parts.h"
#include "project/file.h"

namespace tenter::desktop::panels {

Binding::Binding(Context& context, controls::Editor& editor, std::string subject, std::string setting,
                 QString title)
    : QObject(&editor),
      context_(context),
      editor_(editor),
      subject_(std::move(subject)),
      setting_(std::move(setting)),
      title_(std::move(title)) {
    connect(&editor_, &controls::Editor::edited, this, [this] {
        if (!editing_) start_ = held_.setHere ? held_.value : project::Json();
        editing_ = true;
        put(editor_.value());
    });
    connect(&editor_, &controls::Editor::finished, this, [this] {
        editing_ = false;
        context_.session.document.endGesture();
    });
    connect(&editor_, &controls::Editor::reverted, this, [this] {
        if (editing_) put(start_);
        editing_ = false;
        context_.session.document.endGesture();
        refresh();
    });
    connect(&editor_, &controls::Editor::cleared, this, &Binding::reset);
    connect(&editor_, &controls::Editor::rejected, this,
            [this](const QString& why) { context_.showError(name(), why); });
    editor_.setName(name());
}

std::string Binding::path() const {
    return pathOf(subject_.empty() ? context_.target.subject() : subject_) + "/" + setting_;
}

QString Binding::name() const {
    return QObject::tr("%1 %2", "role and setting: Heading font size")
        .arg(roleTitle(subject_.empty() ? context_.target.subject() : subject_), inSentence(title_));
}

std::optional<double> Binding::pixels() const {
    if (held_.value.is_string()) {
        const auto length = units::Length::parse(held_.value.get<std::string>());
        if (length && (length->unit() == units::Unit::Px || length->isZero())) return std::nullopt;
    }
    return computedPixels(context_.session.layouts, path(), held_.value);
}

void Binding::put(const project::Json& value) {
    const auto problems = context_.session.scope.setSetting(undoName(name(), value.is_null()), path(), value,
                                                            QString::fromStdString(path()));
    if (problems.empty()) return;
    context_.showRefusal(problems, name());
    refresh();
}

void Binding::refresh() {
    held_ = settingValue(context_.session, path());
    editor_.setValue(held_.value);
    editor_.setName(name());
    if (QWidget* field = editor_.focusProxy()) field->setAccessibleDescription(description());
    Q_EMIT refreshed();
}

void Binding::reset() {
    put(project::Json());
    context_.session.document.endGesture();
    refresh();
}

void Binding::useInWholeScope() {
    const bool allVariants = isForAllVariants();
    const std::size_t current = context_.session.view.variant();

    project::Problems problems;
    const auto put = [&](project::Settings& settings, const project::Json& value) {
        project::setSetting(settings, path(), value, problems);
    };
    const project::Json value = held_.from ? held_.value : project::Json();
    context_.edit(QObject::tr("Use %1 in all bands").arg(inSentence(name())), [&](project::Project& project) {
        auto& variants = project.row().variants;
        for (std::size_t i = 0; i < variants.size(); ++i) {
            if (!allVariants && i != current) continue;
            if (allVariants) put(variants[i].set, {});
            for (project::Band& band : variants[i].bands)
                put(band.set, {});
        }
        put(allVariants ? project.row().style : variants[current].set, value);
    });
    refresh();
}

QString Binding::description() const {
    return name() + ": " + originTitle(context_.session, held_) + '.';
}

}  // namespace tenter::desktop::panels
