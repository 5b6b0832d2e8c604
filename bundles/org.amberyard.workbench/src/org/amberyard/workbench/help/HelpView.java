package org.amberyard.workbench.help;

import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.part.ViewPart;

/** The help: pages on the left, found by words; the page in focus on the right. */
public final class HelpView extends ViewPart {
    /** Its id. */
    public static final String ID = "org.amberyard.workbench.help";
    private static final int[] WEIGHTS = {4, 7};
    private static final int MARGIN = 14;

    private final HelpTopics topics = new HelpTopics();
    private Text search;
    private Tree tree;
    private HelpText page;
    private HelpTopic shown;
    private boolean nothingFound;

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Composite left = new Composite(sash, SWT.NONE);
        left.setBackground(Palette.PAPER.color());
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(4, 4).applyTo(left);
        search = new Text(left, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Messages.Search);
        search.addListener(SWT.Modify, e -> list(search.getText().strip()));
        search.addListener(SWT.DefaultSelection, e -> openFirst());
        search.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                tree.setFocus();
                openFirst();
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        tree = new Tree(left, SWT.SINGLE | SWT.V_SCROLL);
        tree.setBackground(Palette.PAPER.color());
        tree.addListener(SWT.Selection, this::chosen);
        tree.addListener(SWT.DefaultSelection, this::chosen);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
        StyledText text = new StyledText(sash, SWT.WRAP | SWT.READ_ONLY | SWT.MULTI | SWT.V_SCROLL);
        text.setBackground(Palette.PAPER.color());
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setCaret(null);
        page = new HelpText(text);
        sash.setWeights(WEIGHTS);
        list("");
        topics.of("start").ifPresent(this::show);
    }

    /** Lists the pages that have all words of a search. */
    private void list(String words) {
        tree.removeAll();
        List<HelpTopic> found = topics.all().stream().filter(t -> words.isEmpty() || t.has(words)).toList();
        found.stream().map(HelpTopic::group).distinct().forEach(group -> {
            TreeItem head = new TreeItem(tree, SWT.NONE);
            head.setText(group);
            found.stream().filter(t -> t.group().equals(group)).forEach(t -> item(head, t));
            head.setExpanded(!words.isEmpty() || !group.equals(Messages.Group_fields));
        });
        sayWhetherFound(found.isEmpty(), words);
    }

    /** Where nothing is found the page goes; it comes back with the next word that is. */
    private void sayWhetherFound(boolean none, String words) {
        if (none) {
            page.say(NLS.bind(Messages.Nothing_found, words));
        } else if (nothingFound) {
            show(shown);
        }
        nothingFound = none;
    }

    private void show(HelpTopic topic) {
        shown = topic;
        page.show(topic);
    }

    private static void item(TreeItem head, HelpTopic topic) {
        TreeItem item = new TreeItem(head, SWT.NONE);
        item.setText(topic.title());
        item.setData(topic);
    }

    private void chosen(Event event) {
        open((TreeItem) event.item);
    }

    /** Opens a page where the words of the search stand; a group is opened by its first page. */
    private void open(TreeItem item) {
        TreeItem opened = item.getData() == null && item.getItemCount() > 0 ? item.getItem(0) : item;
        if (opened.getData() instanceof HelpTopic topic) {
            show(topic);
            page.mark(search.getText().strip());
        }
    }

    private void openFirst() {
        if (tree.getItemCount() > 0) {
            TreeItem first = tree.getItem(0).getItem(0);
            tree.setSelection(first);
            open(first);
        }
    }

    /**
     * Shows a page.
     *
     * @param id id of the page; the first steps are shown where there is none of it
     * @param heading heading to turn to; empty for the beginning
     */
    void show(String id, String heading) {
        Optional<HelpTopic> topic = topics.of(id).or(() -> topics.of("start"));
        search.setText("");
        topic.ifPresent(t -> {
            show(t);
            page.turnTo(heading);
            select(t);
        });
    }

    private void select(HelpTopic topic) {
        for (TreeItem head : tree.getItems()) {
            for (TreeItem item : head.getItems()) {
                if (topic.equals(item.getData())) {
                    tree.setSelection(item);
                }
            }
        }
    }

    @Override
    public void setFocus() {
        search.setFocus();
    }
}
