package org.amberyard.workbench.help;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.amberyard.workbench.find.MenuEntries;
import org.amberyard.workbench.find.MenuEntries.Entry;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** What keys do, by purpose: in tables and charts as it is written down, what stands in the menus as it is bound. */
final class KeyList {
    private static final String HEADING = "# ";
    private static final String BETWEEN = "\t";
    private static final String SHOW_VIEW = "org.eclipse.ui.views.showView";
    /**
     * Keys and what they do.
     *
     * @param keys the keys in words
     * @param what what they do
     */
    record Line(String keys, String what) {
        private boolean has(List<String> words) {
            String all = (keys + " " + what).toLowerCase(Locale.ROOT);
            return words.stream().allMatch(all::contains);
        }
    }

    /**
     * Keys for a purpose.
     *
     * @param title the purpose
     * @param lines the keys
     */
    record Group(String title, List<Line> lines) {
        Group {
            lines = List.copyOf(lines);
        }
    }

    private final List<Group> groups = new ArrayList<>();

    /** The keys of a window. */
    KeyList(IWorkbenchWindow window) {
        addWritten();
        List<Entry> bound = new MenuEntries(window).all().stream().filter(e -> !e.keys().isEmpty()).toList();
        addBound(Messages.Keys_file, bound, e -> e.menu().equals("file"));
        addBound(Messages.Keys_edit, bound, e -> e.menu().equals("edit"));
        addBound(Messages.Keys_look, bound, e -> e.menu().equals("view") && !isView(e));
        addBound(Messages.Keys_views, bound, KeyList::isView);
        addBound(Messages.Keys_help, bound, e -> e.menu().equals("help"));
    }

    private static boolean isView(Entry entry) {
        return entry.command().getId().equals(SHOW_VIEW);
    }

    private void addWritten() {
        String title = "";
        List<Line> lines = new ArrayList<>();
        for (String line : HelpTopics.written("keys").lines().toList()) {
            if (line.startsWith(HEADING)) {
                add(title, lines);
                title = line.substring(HEADING.length());
                lines.clear();
            } else {
                String[] parts = line.split(BETWEEN);
                lines.add(new Line(parts[0], parts[1]));
            }
        }
        add(title, lines);
    }

    private void addBound(String title, List<Entry> bound, Predicate<Entry> chosen) {
        add(title, bound.stream().filter(chosen).map(e -> new Line(String.join(Messages.Keys_or, e.keys()), words(e))).toList());
    }

    private static String words(Entry entry) {
        String label = entry.label().replace("…", "");
        boolean named = entry.within().isEmpty() || isView(entry);
        return named ? label : NLS.bind(Messages.Keys_within, entry.within(), label);
    }

    private void add(String title, List<Line> lines) {
        if (!lines.isEmpty()) {
            groups.add(new Group(title, lines));
        }
    }

    /** The lines in which all words of a search stand, under their purposes; all of them for no words. */
    List<Group> having(String search) {
        List<String> words = Arrays.stream(search.toLowerCase(Locale.ROOT).split("\\s+")).filter(w -> !w.isEmpty()).toList();
        return groups.stream().map(g -> new Group(g.title(), g.lines().stream().filter(l -> l.has(words)).toList()))
                .filter(g -> !g.lines().isEmpty()).toList();
    }
}
