// What the panels have in common: sections of rows, refreshed together, found by words.
#pragma once

#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "controls/fold.h"
#include "panels/project_row.h"
#include "panels/setting_row.h"

namespace tenter::desktop::panels {

/// A setting that the search can find.
struct Findable {
    QString words;               ///< `Line height`
    QString section;             ///< `Lines`
    QWidget* field;              ///< takes the focus
    std::string subject;         ///< the target it needs; empty: any
    QString also;                ///< other words for it: as screen readers are told
    QWidget* instead = nullptr;  ///< takes the focus where `field` is not shown: what brings it up
};

class Panel : public QWidget {
    Q_OBJECT

public:
    explicit Panel(Context& context, QWidget* parent = nullptr);
    /// Shows everything anew.
    virtual void refresh();
    /// Shows anew what depends on the width alone.
    virtual void refreshPixels();
    /// Which subjects the panel can be about, besides text roles; empty: it has no subject.
    [[nodiscard]] virtual std::vector<std::string> subjects() const { return {}; }
    /// Whether text roles are among its subjects.
    [[nodiscard]] virtual bool takesRoles() const { return false; }
    /// Whether its edits go to the layer in scope.
    [[nodiscard]] virtual bool takesScope() const { return true; }
    [[nodiscard]] const std::vector<Findable>& findables() const { return findables_; }

protected:
    /// Starts a section; what is added next stands in it.
    QWidget* section(const QString& title);
    SettingRow* setting(const QString& title, controls::Editor* editor, const std::string& subject,
                        const std::string& setting);
    ProjectRow* property(const QString& title, const QString& name, controls::Editor* editor,
                         ProjectRow::Get get, ProjectRow::Set set);
    void addWidget(QWidget* widget);
    /// What is added next stands in a fold, until the next one or the next section.
    controls::Fold* fold(const QString& title);
    /// Adds a panel that is a part of this one.
    void addPart(Panel* part);
    void addFindable(const QString& words, QWidget* field, const std::string& subject = {},
                     const QString& also = {});
    /// What was added last is shown only while `other` has it shown: a search goes there.
    void findInstead(QWidget* other) { findables_.back().instead = other; }
    /// To be called last: keeps what was added at the top.
    void close();
    /// The title of the section that was started last.
    [[nodiscard]] QLabel* sectionLabel() const { return sectionLabel_; }
    [[nodiscard]] Context& context() const { return context_; }
    [[nodiscard]] Viewing& viewing() const { return context_.viewing; }
    [[nodiscard]] Document& document() const { return context_.viewing.document(); }

private:
    Context& context_;
    QVBoxLayout* panelBox_;
    QVBoxLayout* box_;
    QVBoxLayout* sectionBox_;
    QLabel* sectionLabel_ = nullptr;
    QString sectionTitle_;
    std::vector<Panel*> parts_;
    std::vector<SettingRow*> settings_;
    std::vector<ProjectRow*> properties_;
    std::vector<Findable> findables_;
};

}  // namespace tenter::desktop::panels
