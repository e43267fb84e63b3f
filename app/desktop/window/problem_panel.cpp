#include "window/problem_panel.h"

#include <QHBoxLayout>
#include <QPushButton>

#include "controls/inks.h"

namespace tenter::desktop::window {

ProblemPanel::ProblemPanel(QWidget* parent)
    : QFrame(parent), headline_(new QLabel(this)), lines_(new QPlainTextEdit(this)) {
    setAccessibleName(QObject::tr("Problems"));
    setAutoFillBackground(true);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 12, 16, 12);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    QFont font = headline_->font();
    font.setWeight(QFont::DemiBold);
    headline_->setFont(font);
    headline_->setWordWrap(true);
    auto* close = new QPushButton(QObject::tr("Close"), this);
    head->addWidget(headline_, 1);
    head->addWidget(close, 0, Qt::AlignTop);
    box->addLayout(head);
    box->addWidget(lines_);
    lines_->setReadOnly(true);
    lines_->setFrameShape(QFrame::NoFrame);
    lines_->setAccessibleName(QObject::tr("What is wrong, where, and how to fix it"));
    lines_->setLineWrapMode(QPlainTextEdit::WidgetWidth);
    lines_->setTabChangesFocus(true);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void ProblemPanel::showProblems(const QString& headline, const project::Problems& problems) {
    QPalette palette = headline_->palette();
    palette.setColor(QPalette::WindowText, controls::caution(palette));
    headline_->setPalette(palette);
    headline_->setText(headline);
    QStringList lines;
    for (const project::Problem& problem : problems)
        lines << QString::fromStdString(problem.line());
    lines_->setPlainText(lines.join('\n'));
    // Long lines wrap; more than eight lines scroll.
    const int shown = std::min(8, static_cast<int>(lines.size()) * 3 / 2 + 1);
    lines_->setFixedHeight(shown * fontMetrics().lineSpacing() + 8);
    show();
    lines_->setFocus();
}

}  // namespace tenter::desktop::window
