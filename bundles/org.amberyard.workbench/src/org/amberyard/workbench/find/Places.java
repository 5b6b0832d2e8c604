package org.amberyard.workbench.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.model.common.Sourced;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.lists.Section;
import org.amberyard.workbench.lists.Section.Line;
import org.amberyard.workbench.lists.Section.OneOf;
import org.amberyard.workbench.views.ResultsView;
import org.amberyard.workbench.views.StudyEditors;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.IViewDescriptor;

/** Everything in a window that has a name, with the way to it, and what can be done by a menu. */
final class Places {
    private static final String VIEWS = "org.amberyard.workbench.";
    /** Elements of a kind whose fields are each listed by the element's name; of more, the element is found first. */
    private static final int MOST_NAMED = 60;

    private final AlsoCalled called = new AlsoCalled();
    private final IWorkbenchPage page;

    Places(IWorkbenchPage page) {
        this.page = page;
    }

    /** All of it; fields and elements as far as a study is open. */
    List<Section> sections() {
        List<Section> all = new ArrayList<>(List.of(new Section(Messages.Find_views, views())));
        Section commands = new Section(Messages.Find_commands, new MenuCommands(page.getWorkbenchWindow()).lines());
        if (page.getActiveEditor() instanceof StudyEditor editor) {
            all.add(new Section(Messages.Find_pages, Arrays.stream(PageKind.values())
                    .map(kind -> new Line(kind.title(), () -> editor.show(kind))).toList()));
            all.add(commands);
            all.add(new Section(Messages.Find_tables, tables()));
            List<EObject> elements = elements(editor);
            all.add(new Section(Messages.Find_fields, fields(elements)));
            all.add(new Section(Messages.Find_elements, elements.stream().map(this::line).toList()));
            all.add(new Section(Messages.Find_notes, notes(elements)));
        } else {
            all.add(commands);
        }
        return all;
    }

    private List<Line> views() {
        return Arrays.stream(page.getWorkbenchWindow().getWorkbench().getViewRegistry().getViews())
                .filter(v -> v.getId().startsWith(VIEWS)).sorted(Comparator.comparing(IViewDescriptor::getLabel))
                .map(v -> new Line(v.getLabel(), () -> show(v.getId()))).toList();
    }

    private void show(String view) {
        try {
            page.showView(view);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<Line> tables() {
        return ResultTables.groups().stream().flatMap(g -> IntStream.range(0, g.names().size())
                .mapToObj(t -> new Line(Words.say(g.tables().get(t)), () -> ResultsView.show(page, g.names().get(t))))).toList();
    }

    private static List<EObject> elements(StudyEditor editor) {
        List<EObject> elements = new ArrayList<>();
        for (TreeIterator<EObject> all = editor.session().study().eAllContents(); all.hasNext();) {
            elements.add(all.next());
        }
        return elements;
    }

    private Line line(EObject element) {
        String name = Words.name(element);
        String kind = Words.kind(element.eClass());
        return new Line(name, NLS.bind(Messages.Find_named, name, kind), List.of(name + " " + kind, kind + " " + name), Optional.empty(),
                () -> StudyEditors.open(page, element, null));
    }

    private List<Line> notes(List<EObject> elements) {
        return elements.stream().filter(Sourced.class::isInstance).map(Sourced.class::cast)
                .filter(e -> e.getNote() != null && !e.getNote().isBlank())
                .map(e -> new Line(NLS.bind(Messages.Find_named, e.getNote().replace('\n', ' '), Words.withKind(e)),
                        () -> StudyEditors.open(page, e, null)))
                .toList();
    }

    /** Each field in the first element that has it, and in each other where that is named. */
    private List<Line> fields(List<EObject> elements) {
        Map<EClass, List<EObject>> byKind = elements.stream().collect(Collectors.groupingBy(EObject::eClass, LinkedHashMap::new, Collectors.toList()));
        List<Line> lines = new ArrayList<>();
        byKind.forEach((kind, all) -> Columns.of(kind).forEach(field -> addField(kind, all, field, lines)));
        return lines;
    }

    private void addField(EClass kind, List<EObject> elements, EStructuralFeature field, List<Line> lines) {
        String label = Words.field(field).label();
        List<String> also = called.of(field);
        String general = NLS.bind(Messages.Find_named, label, Words.kind(kind));
        lines.add(new Line(label, general, also, Optional.empty(), () -> StudyEditors.open(page, elements.get(0), field)));
        if (elements.size() > 1 && elements.size() <= MOST_NAMED) {
            elements.forEach(e -> lines.add(new Line(label, NLS.bind(Messages.Find_named, label, Words.withKind(e)), called(also, e, label),
                    Optional.of(new OneOf(general, Words.name(e))),
                    () -> StudyEditors.open(page, e, field))));
        }
    }

    /** “Diesel price” is the price of what is called diesel. */
    private static List<String> called(List<String> also, EObject element, String label) {
        return Stream.concat(also.stream(), Stream.of(Words.name(element) + " " + label)).toList();
    }
}
