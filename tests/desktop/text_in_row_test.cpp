// Texts are edited in the row: runs, links and breaks stay, the layout follows, and each edit is one step.
#include <QInputMethodEvent>
#include <QtTest>

#include "row/editing/text_field.h"
#include "row/editing/text_map.h"
#include "row_at_hand.h"

namespace tenter::desktop {

using project::Run;

class TextInRowTest : public RowAtHand {
    Q_OBJECT

    row::editing::TextField* editor() { return row_->findChild<row::editing::TextField*>(); }
    void type(const QString& text) {
        for (const QChar& character : text)
            QTest::sendKeyEvent(QTest::Click, QApplication::focusWidget(), Qt::Key_unknown, character, {});
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }
    QRectF caret() { return editor()->inputMethodQuery(Qt::ImCursorRectangle).toRectF(); }
    double caretInView() { return caret().center().x() + editor()->x(); }
    void compose(const QString& composed, const QString& committed = {}) {
        QInputMethodEvent event(composed, {{QInputMethodEvent::Cursor, int(composed.size()), 1, {}}});
        event.setCommitString(committed);
        QApplication::sendEvent(editor(), &event);
    }
    QString laidText(std::size_t card, const std::string& role) {
        return QString::fromStdU16String(laid(card, indexOf(card, role)).paragraph->text());
    }
    void setCopy(std::size_t card, const std::string& role, const project::Copy& copy) {
        const std::size_t part = indexOf(card, role);
        QVERIFY(document()
                    .edit("Write",
                          [&](project::Project& project) {
                              std::get<project::TextPart>(project.part({card, part})).copy = copy;
                          })
                    .empty());
        settle();
    }

private Q_SLOTS:
    void init() { openRow("shore-walks"); }
    void cleanup() { window_.reset(); }

    void writesWhereItWasClicked() {
        const std::string before = words(0, "heading");
        const int from = steps();
        doubleClick(lineStart(0, "heading") + QPoint(1, 0));
        QVERIFY(editor()->hasFocus());
        QCOMPARE(session().selection.part(), std::optional(project::PartRef{0, indexOf(0, "heading")}));
        type("Come on ");
        // The layout follows what is typed.
        QVERIFY(laidText(0, "heading").startsWith("Come on "));
        QTest::mouseClick(row_->viewport(), Qt::LeftButton, {}, lineStart(1, "heading"));
        QVERIFY(!editor()->isVisible());
        QCOMPARE(words(0, "heading"), "Come on " + before);
        QCOMPARE(session().selection.part(), std::optional(project::PartRef{1, indexOf(1, "heading")}));
        QCOMPARE(steps(), from + 1);
        QCOMPARE(lastStep(), QString("Change heading text"));
        document().undoStack().undo();
        QCOMPARE(words(0, "heading"), before);
    }

    void restoresTheTextWithEscape() {
        const project::Project before = project();
        doubleClick(lineStart(0, "heading"));
        type("abc");
        press(Qt::Key_B, Qt::ControlModifier);
        type("def");
        QVERIFY(project() != before);
        press(Qt::Key_Escape);
        QVERIFY(!editor()->isVisible() && row_->hasFocus());
        QCOMPARE(project(), before);
        QCOMPARE(document().undoStack().count(), 0);
        // The part stays selected; a second Escape clears the selection.
        QVERIFY(session().selection.part().has_value());
        press(Qt::Key_Escape);
        QVERIFY(!session().selection.part().has_value());
    }

    void keepsRunsLinksAndBreaks() {
        const project::Copy copy{{Run::Kind::Plain, "Low ", {}},
                                 {Run::Kind::Strong, "tide", {}},
                                 {Run::Kind::Break, {}, {}},
                                 {Run::Kind::Link, "map", "/map"},
                                 {Run::Kind::Emphasis, " today", {}}};
        setCopy(0, "body", copy);
        session().selection.select(Place{0, indexOf(0, "body")});
        row_->setFocus();
        press(Qt::Key_Return);
        QVERIFY(editor()->hasFocus());
        type("!");
        project::Copy expected = copy;
        expected.back().text += "!";
        QCOMPARE(text(0, "body").copy, expected);
        // Ctrl+B makes the words strong that are selected.
        press(Qt::Key_Home, Qt::ControlModifier);
        for (int i = 0; i < 3; ++i)
            press(Qt::Key_Right, Qt::ShiftModifier);
        press(Qt::Key_B, Qt::ControlModifier);
        expected[0] = {Run::Kind::Strong, "Low", {}};
        expected.insert(expected.begin() + 1, {Run::Kind::Plain, " ", {}});
        QCOMPARE(text(0, "body").copy, expected);
        press(Qt::Key_Return, Qt::ControlModifier);
        QVERIFY(!editor()->isVisible() && row_->hasFocus());
        QCOMPARE(steps(), 2);
        document().undoStack().undo();
        QCOMPARE(text(0, "body").copy, copy);
    }

    void breaksALineWithEnter() {
        setCopy(0, "heading", {{Run::Kind::Plain, "One two", {}}});
        doubleClick(lineStart(0, "heading") + QPoint(1, 0));
        press(Qt::Key_End);
        press(Qt::Key_Return);
        // The caret is on the line that is to be written.
        const layout::LaidPart& part = laid(0, indexOf(0, "heading"));
        QCOMPARE(part.lineCount, 1U);
        QVERIFY(caret().top() >= part.lineHeight);
        type("x");
        QCOMPARE(words(0, "heading"), std::string("One two\nx"));
        QCOMPARE(laid(0, indexOf(0, "heading")).lineCount, 2U);
    }

    void goesToTheNextTextWithTab() {
        const int from = steps();
        doubleClick(lineStart(0, "heading"));
        press(Qt::Key_Tab);
        QVERIFY(editor()->hasFocus());
        QCOMPARE(session().selection.part(), std::optional(project::PartRef{0, indexOf(0, "body")}));
        // The text is selected: typing replaces it.
        type("New");
        QCOMPARE(words(0, "body"), std::string("New"));
        press(Qt::Key_Tab);
        type("Go");
        QCOMPARE(words(0, "button"), std::string("Go"));
        press(Qt::Key_Tab);
        QCOMPARE(session().selection.part(), std::optional(project::PartRef{1, indexOf(1, "heading")}));
        press(Qt::Key_Backtab, Qt::ShiftModifier);
        QCOMPARE(session().selection.part(), std::optional(project::PartRef{0, indexOf(0, "button")}));
        // One step for each text that was changed.
        QCOMPARE(steps(), from + 2);
        // After the last text, the row has the focus.
        const std::size_t last = project().row().cards.size() - 1;
        session().selection.select(Place{last, indexOf(last, "button")}, true);
        row_->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Tab);
        QVERIFY(!editor()->isVisible() && row_->hasFocus());
    }

    void movesTheCaretAlongTheLaidOutLines() {
        const std::size_t body = indexOf(0, "body");
        reveal(0, body);
        QVERIFY(laid(0, body).lineCount >= 3);
        doubleClick(lineStart(0, "body", 1) + QPoint(1, 0));
        const double left = caretInView();
        press(Qt::Key_End);
        // The caret stands at the end of the second line, not at the start of the third.
        const layout::LaidLine& line = layout().lines[laid(0, body).firstLine + 1];
        QCOMPARE(std::abs(caretInView() - at(line.x + line.line.width, 0).x()) < 2, true);
        press(Qt::Key_Home);
        QCOMPARE(caretInView(), left);
        const double top = caret().top();
        press(Qt::Key_Down);
        QVERIFY(caret().top() > top);
        press(Qt::Key_Up);
        QCOMPARE(caret().top(), top);
        press(Qt::Key_Home, Qt::ShiftModifier);
        press(Qt::Key_Down, Qt::ShiftModifier);
        // A whole line is selected.
        const QString selected = editor()->textCursor().selectedText();
        QCOMPARE(selected.trimmed(),
                 QString::fromStdString(laid(0, body).paragraph->utf8(line.line.first, line.line.end)));
    }

    void composesTextOfAnInputMethod() {
        setCopy(0, "heading", {{Run::Kind::Plain, "AB", {}}});
        const int from = steps();
        doubleClick(lineStart(0, "heading") + QPoint(1, 0));
        QVERIFY(editor()->testAttribute(Qt::WA_InputMethodEnabled));
        QVERIFY(editor()->inputMethodQuery(Qt::ImEnabled).toBool());
        const double start = caretInView();
        compose("\u306B");
        QCOMPARE(laidText(0, "heading"), QString("\u306BAB"));
        const double one = caretInView();
        QVERIFY(one > start);
        compose("\u306B\u307B");
        QCOMPARE(laidText(0, "heading"), QString("\u306B\u307BAB"));
        QVERIFY(caretInView() > one);
        // What is composed and given up leaves nothing.
        compose("");
        QCOMPARE(words(0, "heading"), std::string("AB"));
        compose("\u306B\u307B");
        compose("", "\u65E5\u672C");
        QCOMPARE(words(0, "heading"), QString("\u65E5\u672CAB").toStdString());
        press(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(steps(), from + 1);
        document().undoStack().undo();
        QCOMPARE(words(0, "heading"), std::string("AB"));
    }

    void restoresTheTextWhileItIsComposed() {
        const project::Project before = project();
        doubleClick(lineStart(0, "heading"));
        compose("\u306B\u307B");
        QVERIFY(project() != before);
        press(Qt::Key_Escape);
        QCOMPARE(project(), before);
        QCOMPARE(document().undoStack().count(), 0);
    }

    void writesFromRightToLeft() {
        window_.reset();
        openRow("marsh-ar");
        row_->setFit(true);
        const layout::LaidPart& part = laid(0, indexOf(0, "heading"));
        const layout::LaidLine& line = layout().lines[part.firstLine];
        doubleClick(at(line.x + line.line.width - 1, line.baseline - 4));
        const QString before = QString::fromStdString(words(0, "heading"));
        const double start = caretInView();
        // Left goes on in the text.
        press(Qt::Key_Left);
        QVERIFY(caretInView() < start);
        QCOMPARE(editor()->textCursor().position(), 1);
        press(Qt::Key_Home);
        QCOMPARE(caretInView(), start);
        type(QString::fromUtf8("\u0645\u0627 "));
        QCOMPARE(QString::fromStdString(words(0, "heading")), QString("\u0645\u0627 ") + before);
        QVERIFY(caretInView() < start);
        press(Qt::Key_End);
        const layout::LaidLine& now = layout().lines[laid(0, indexOf(0, "heading")).firstLine];
        QVERIFY(std::abs(caretInView() - at(now.x, 0).x()) < 2);
    }

    void writesInAScaledRowAndInAllVariants() {
        row_->setFit(true);
        QVERIFY(row_->zoom() < 1);
        doubleClick(lineStart(1, "heading") + QPoint(1, 0));
        const double zoom = row_->zoom();
        type("Far from here, and far from anything that you know, ");
        // The scale stays until the text is done, though the card has grown.
        QCOMPARE(row_->zoom(), zoom);
        QVERIFY(words(1, "heading").starts_with("Far "));
        press(Qt::Key_Return, Qt::ControlModifier);
        row_->allVariantsAction()->setChecked(true);
        settle();
        // The page of another variant: it becomes the current one.
        const QRectF page = row_->sheetsInView()[1].page;
        const layout::Layout& other = session().layouts.of(1).layout;
        const layout::LaidPart& heading =
            other.parts[*row::indexOf(other, project::PartRef{0, indexOf(0, "heading")})];
        const layout::LaidLine& line = other.lines[heading.firstLine];
        const QPointF point =
            page.topLeft() + QPointF(line.x, line.baseline - 4) * row_->zoom() + QPointF(2, 0);
        QVERIFY(row_->viewport()->rect().contains(point.toPoint()));
        doubleClick(point.toPoint());
        QVERIFY(editor()->hasFocus());
        QCOMPARE(session().view.variant(), std::size_t{1});
        press(Qt::Key_Home);
        type("Near ");
        QVERIFY2(words(0, "heading").starts_with("Near "), words(0, "heading").c_str());
        QVERIFY(editor()->geometry().intersects(row_->sheetsInView()[1].page.toRect()));
    }

    void endsWhereTheDocumentIsNotShown() {
        doubleClick(lineStart(0, "heading"));
        type("abc");
        session().shown.showSaved(true);
        QVERIFY(!editor()->isVisible());
        session().shown.showSaved(false);
        QCOMPARE(steps(), 1);
        session().shown.tryOut(project::Trial{});
        settle();
        doubleClick(lineStart(0, "heading"));
        QVERIFY(!editor()->isVisible());
        QVERIFY(label("A text test is shown") != nullptr);
    }

    void goesOnAfterUndo() {
        const std::string before = words(0, "heading");
        doubleClick(lineStart(0, "heading") + QPoint(1, 0));
        type("abc");
        press(Qt::Key_Z, Qt::ControlModifier);
        QCOMPARE(words(0, "heading"), before);
        QVERIFY(editor()->hasFocus());
        QCOMPARE(editor()->copyText(), text(0, "heading").copy);
        type("x");
        press(Qt::Key_Escape);
        QCOMPARE(words(0, "heading"), before);
    }

    // The caret stands where the characters are drawn, whatever script, case and spacing they have.
    void knowsWhereCharactersAre() {
        for (const char* sample : {"shore-walks", "marsh-ar", "night-sky", "ferry-words"}) {
            window_.reset();
            openRow(sample);
            const LaidOutRow row = session().layouts.current();
            for (std::size_t i = 0; i < row.layout.parts.size(); ++i) {
                const layout::LaidPart& part = row.layout.parts[i];
                if (part.picture || part.lineCount == 0) continue;
                const project::PartRef ref = row::refOf(row.layout, i);
                const auto& copy = std::get<project::TextPart>(project().part(ref)).copy;
                const row::editing::TextMap map(row, i, copy);
                QCOMPARE(map.lineCount(), std::size_t{part.lineCount});
                for (std::uint32_t n = 0; n < part.lineCount; ++n) {
                    const layout::LaidLine& line = row.layout.lines[part.firstLine + n];
                    // The caret stands before a hyphen that only the line has.
                    const double hyphen =
                        line.line.hyphen ? part.paragraph->hyphenAdvanceBefore(line.line.end) * part.fontSize
                                         : 0;
                    const double end = line.x + line.line.width - hyphen;
                    const bool rightToLeft = part.paragraph->rightToLeft();
                    const auto first = map.startOf(n);
                    const auto last = map.endOf(n);
                    double left = map.caret(first.position, first.atLineEnd).x;
                    double right = map.caret(last.position, last.atLineEnd).x;
                    if (rightToLeft) std::swap(left, right);
                    QVERIFY2(std::abs(left - line.x) < 0.6, sample);
                    QVERIFY2(std::abs(right - end) < 0.6, sample);
                    // Every caret is found again at its place.
                    for (int p = first.position; p < last.position; ++p) {
                        const auto caret = map.caret(p);
                        const auto found = map.positionOn(n, caret.x);
                        QVERIFY2(std::abs(map.caret(found.position, found.atLineEnd).x - caret.x) < 0.01 ||
                                     !QString::fromStdString(project::plainText(copy)).at(p).isLetter(),
                                 sample);
                    }
                }
            }
        }
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::TextInRowTest)
#include "text_in_row_test.moc"
