package org.amberyard.workbench.look;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Gives widgets that have colours of the palette those of another theme; what is painted by hand asks the palette anyway. */
final class Recolouring {
    private final Map<RGB, Color> grounds = new HashMap<>();
    private final Map<RGB, Color> inks = new HashMap<>();
    private final List<Runnable> changes = new ArrayList<>();

    Recolouring(Theme from, Theme to) {
        for (Palette colour : Palette.values()) {
            // Where two colours are the same in a theme, the later one is that of widgets; the amber of the focus is only painted.
            (colour.isGround() ? grounds : inks).put(colour.in(from).getRGB(), colour.in(to));
        }
    }

    /** Carries out what has been noted; the platform, which takes colours back when its own theme changes, must be done. */
    void apply() {
        changes.forEach(Runnable::run);
    }

    /** Notes how a control and all that is in it are to be recoloured. */
    void note(Control control) {
        Color ground = grounds.get(control.getBackground().getRGB());
        Color ink = inks.get(control.getForeground().getRGB());
        if (ground != null) {
            changes.add(() -> control.setBackground(ground));
        }
        if (ink != null) {
            changes.add(() -> control.setForeground(ink));
        }
        noteInside(control);
        changes.add(control::redraw);
        if (control instanceof Composite composite) {
            List.of(composite.getChildren()).forEach(this::note);
        }
    }

    private void noteInside(Control control) {
        if (control instanceof StyledText text) {
            StyleRange[] ranges = Arrays.stream(text.getStyleRanges()).map(this::recoloured).toArray(StyleRange[]::new);
            changes.add(() -> text.setStyleRanges(ranges));
        } else if (control instanceof Link link) {
            Color ink = inks.getOrDefault(link.getLinkForeground().getRGB(), link.getLinkForeground());
            changes.add(() -> link.setLinkForeground(ink));
        } else if (control instanceof CTabFolder folder) {
            changes.add(() -> DarkTabs.refresh(folder));
        } else if (control instanceof ToolBar bar) {
            List.of(bar.getItems()).forEach(this::note);
        } else if (control instanceof Table table) {
            List.of(table.getItems()).forEach(this::note);
        } else if (control instanceof Tree tree) {
            List.of(tree.getItems()).forEach(this::note);
        }
    }

    private StyleRange recoloured(StyleRange range) {
        range.foreground = range.foreground == null ? null : inks.getOrDefault(range.foreground.getRGB(), range.foreground);
        range.background = range.background == null ? null : grounds.getOrDefault(range.background.getRGB(), range.background);
        return range;
    }

    private void note(ToolItem item) {
        Color ink = item.getForeground() == null ? null : inks.get(item.getForeground().getRGB());
        if (ink != null) {
            changes.add(() -> item.setForeground(ink));
        }
    }

    private void note(TableItem item) {
        Color ink = inks.get(item.getForeground().getRGB());
        if (ink != null) {
            changes.add(() -> item.setForeground(ink));
        }
    }

    private void note(TreeItem item) {
        Color ink = inks.get(item.getForeground().getRGB());
        if (ink != null) {
            changes.add(() -> item.setForeground(ink));
        }
        List.of(item.getItems()).forEach(this::note);
    }
}
