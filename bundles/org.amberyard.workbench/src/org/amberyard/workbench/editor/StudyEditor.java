package org.amberyard.workbench.editor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.grid.CellEntry;
import org.amberyard.workbench.look.DarkTabs;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.SessionListener;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.part.EditorPart;

/** Edits a study on pages like the sheets of a workbook; a page is made when it is first looked at. */
public final class StudyEditor extends EditorPart implements ISaveablePart2 {

    /** Id of the editor. */
    public static final String ID = "org.amberyard.workbench.studyEditor";

    private final Map<PageKind, StudyPage> pages = new EnumMap<>(PageKind.class);
    private final SessionListener listener = new SessionListener() {
        @Override
        public void studyChanged(StudySession changed) {
            // what was refused before is no longer what was done last
            statusLine().setErrorMessage(null);
            shownPage().ifPresent(StudyPage::update);
        }

        @Override
        public void evaluationChanged(StudySession changed) {
            shownPage().ifPresent(StudyPage::evaluationChanged);
            List<Finding> findings = changed.evaluation().findings();
            if (findings != markedFindings) {
                markedFindings = findings;
                shownPage().ifPresent(StudyPage::redrawMarks);
                tellFaults();
            }
        }

        @Override
        public void choiceChanged(StudySession changed) {
            shownPage().ifPresent(StudyPage::choiceChanged);
        }

        @Override
        public void fileChanged(StudySession changed) {
            setPartName(changed.title());
            setTitleToolTip(getEditorInput().getToolTipText());
            firePropertyChange(ISaveablePart2.PROP_DIRTY);
        }
    };
    private StudySession session;
    private List<Finding> markedFindings = List.of();
    private CTabFolder folder;
    private PageStage stage;
    private FaultStrip faults;
    private EntryGuard guard;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        session = ((StudyInput) input).session();
        setPartName(input.getName());
        session.addListener(listener);
    }

    @Override
    public void createPartControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        folder = new CTabFolder(area, SWT.BOTTOM | SWT.FLAT);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(folder);
        folder.setRenderer(new DarkTabs(folder));
        folder.setData("org.eclipse.e4.ui.css.id", "StudyPages");
        for (PageKind kind : PageKind.values()) {
            CTabItem tab = new CTabItem(folder, SWT.NONE);
            tab.setText(kind.title());
            tab.setData(kind);
        }
        folder.addListener(SWT.Selection, e -> tabChosen());
        stage = new PageStage(folder);
        faults = new FaultStrip(area, this::open);
        guard = new EntryGuard(folder, pages::values);
        guard.hook();
        folder.setSelection(0);
        shown();
    }

    /** The keyboard changes tabs without a mouse press; an entry that is refused brings its page back. */
    private void tabChosen() {
        if (closeEntries()) {
            shown();
            shownPage().ifPresent(StudyPage::setFocus);
        }
    }

    /** The study that is edited. */
    public StudySession session() {
        return session;
    }

    private void shown() {
        PageKind kind = shownKind();
        StudyPage page = pages.get(kind);
        if (page == null) {
            page = kind.newPage(new PageSite(session, this::hint, this::entryChanged, this::refusal,
                    this::vary, () -> bringOn(kind)));
            stage.add(folder.getSelection(), page.create(folder));
            pages.put(kind, page);
        } else {
            page.update();
        }
        stage.show(folder.getSelection());
        tellFaults();
    }

    /** Marks say which cells are wrong; what is wrong with them, and how to put it right, must not be sought in another view. */
    private void tellFaults() {
        if (folder != null && !folder.isDisposed()) {
            Map<Boolean, List<Finding>> errors = markedFindings.stream().filter(f -> f.severity() == Severity.ERROR)
                    .collect(Collectors.partitioningBy(f -> PageKind.of(f.element()) == shownKind()));
            faults.show(errors.get(true), errors.get(false));
        }
    }

    private void open(Finding finding) {
        reveal(finding.element(), finding.feature()).ifPresent(table -> table.grid().setFocus());
    }

    private PageKind shownKind() {
        return (PageKind) folder.getSelection().getData();
    }

    private Optional<StudyPage> shownPage() {
        return folder == null || folder.isDisposed() ? Optional.empty() : Optional.ofNullable(pages.get(shownKind()));
    }

    private void hint(String text) {
        statusLine().setMessage(text.replace('\n', ' '));
    }

    /** Makes a field an uncertain input and goes there; says why when it cannot be varied. */
    private void vary(EObject element, EStructuralFeature field) {
        try {
            UncertainInput input = new VaryField(session).vary(element, field);
            reveal(input, null).ifPresent(table -> table.grid().setFocus());
        } catch (IllegalArgumentException e) {
            refusal(e.getMessage());
        }
    }

    private void entryChanged() {
        firePropertyChange(ISaveablePart2.PROP_DIRTY);
    }

    private void refusal(String text) {
        statusLine().setErrorMessage(text);
    }

    private IStatusLineManager statusLine() {
        return getEditorSite().getActionBars().getStatusLineManager();
    }

    /** Shows a page. */
    public void show(PageKind kind) {
        showAfterEntry(kind);
    }

    /** Shows a page of the editor, which may itself be behind another. */
    private boolean bringOn(PageKind kind) {
        getSite().getPage().activate(this);
        return shownKind() == kind || showAfterEntry(kind);
    }

    private boolean showAfterEntry(PageKind kind) {
        boolean entered = closeEntries();
        if (entered) {
            folder.setSelection(kind.ordinal());
            shown();
        }
        return entered;
    }

    /** Shows a field of an element, or the element when the field is null; answers the table that has it. */
    public Optional<FeatureTable> reveal(EObject element, EStructuralFeature feature) {
        return showAfterEntry(PageKind.of(element)) ? revealShown(element, feature) : Optional.empty();
    }

    private Optional<FeatureTable> revealShown(EObject element, EStructuralFeature feature) {
        return shownPage().flatMap(page -> page.reveal(element, feature));
    }

    @Override
    public void setFocus() {
        ActiveSession.here().set(session);
        shownPage().ifPresent(StudyPage::setFocus);
    }

    @Override
    public boolean isDirty() {
        return session.isDirty() || guard != null && guard.open().filter(CellEntry::isChanged).isPresent();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (!closeEntries() || !new Saving(getSite().getShell(), session).save()) {
            monitor.setCanceled(true);
        }
    }

    @Override
    public int promptToSaveOnClose() {
        return new Saving(getSite().getShell(), session).ask();
    }

    @Override
    public void doSaveAs() {
        if (closeEntries()) {
            new Saving(getSite().getShell(), session).saveAs();
        }
    }

    /** Enters what is being typed on any page; one that refuses it is shown. */
    private boolean closeEntries() {
        for (Map.Entry<PageKind, StudyPage> page : pages.entrySet()) {
            if (!page.getValue().closeEntries()) {
                folder.setSelection(page.getKey().ordinal());
                return false;
            }
        }
        return true;
    }

    /** The entry that is open on any page, if there is one. */
    public Optional<CellEntry> openEntry() {
        return guard.open();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return true;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == StudySession.class ? adapter.cast(session) : super.getAdapter(adapter);
    }

    @Override
    public void dispose() {
        session.removeListener(listener);
        if (ActiveSession.here().get().filter(s -> s == session).isPresent()) {
            ActiveSession.here().set(null);
        }
        session.close();
        super.dispose();
    }
}
