#include "findings/caution.h"

#include "checks/finding.h"
#include "controls/text_scale.h"
#include "wording/say.h"

namespace tenter::desktop::findings {

namespace {

QString wholeText() {
    return QString::fromStdString(wording::say(checks::caution));
}

}  // namespace

Caution::Caution(QWidget* parent) : QLabel(parent) {
    setForegroundRole(QPalette::PlaceholderText);
    setWordWrap(true);
    setContentsMargins(24, 6, 16, 6);
    setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    setFont(controls::smallFont(font()));
    setToolTip(wholeText());
    setAccessibleName(wholeText());
    connect(this, &QLabel::linkActivated, this, [this](const QString& link) { show(link == "more"); });
    show(false);
}

void Caution::show(bool inFull) {
    setText(inFull ? wholeText().toHtmlEscaped() + " <a href=\"less\">" + QObject::tr("Less") + "</a>"
                   : QObject::tr("Checks cover part of WCAG 2.2 only. <a href=\"more\">Read more</a>"));
}

}  // namespace tenter::desktop::findings
