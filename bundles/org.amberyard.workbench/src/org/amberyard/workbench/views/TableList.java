package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.lists.Section;
import org.amberyard.workbench.language.Words;

/**
 * The tables that can be looked at: those of all results, and those of a what-if that was run.
 *
 * @param whatIf tables of the what-if; none where none was run
 */
record TableList(List<ResultTable> whatIf) {

    TableList {
        whatIf = List.copyOf(whatIf);
    }

    /** The first of some names under which there is a table. */
    String first(List<String> names) {
        List<String> ofResults = ResultTables.groups().stream().flatMap(g -> g.names().stream()).toList();
        return names.stream().filter(n -> ofResults.contains(n) || ofWhatIf(n).isPresent()).findFirst().orElse(ofResults.get(0));
    }

    /** The table of the what-if with a name. */
    Optional<ResultTable> ofWhatIf(String name) {
        return whatIf.stream().filter(t -> t.name().equals(name)).findFirst();
    }

    /** Its title in the language of the window. */
    String title(String name) {
        return Words.say(ofWhatIf(name).map(ResultTable::title).orElseGet(() -> ResultTables.titles().get(ResultTables.place(name))));
    }

    /** All of them, by what they are about. */
    List<Section> sections(Consumer<String> choose) {
        List<Section> sections = new ArrayList<>();
        for (ResultTables.Group group : ResultTables.groups()) {
            sections.add(new Section(Words.say(group.title()), IntStream.range(0, group.names().size())
                    .mapToObj(t -> new Section.Line(Words.say(group.tables().get(t)), () -> choose.accept(group.names().get(t)))).toList()));
        }
        if (!whatIf.isEmpty()) {
            sections.add(new Section(Messages.Results_whatIf, whatIf.stream()
                    .map(t -> new Section.Line(Words.say(t.title()), () -> choose.accept(t.name()))).toList()));
        }
        return sections;
    }
}
