package org.amberyard.workbench.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.custom.Bullet;
import org.eclipse.swt.custom.ST;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GlyphMetrics;

/** Lays a page of the help out in a text. */
final class HelpText {
    private static final String HEADING = "# ";
    private static final String POINT = "- ";
    private static final String FORMULA = "    ";
    private static final int INDENT = 18;
    private static final int SPACE = 8;

    private final StyledText target;
    private final List<String> headings = new ArrayList<>();
    private final List<Integer> offsets = new ArrayList<>();

    HelpText(StyledText target) {
        this.target = target;
    }

    /** Shows no page but a line. */
    void say(String line) {
        clear();
        append(line, Fonts.TEXT.font());
    }

    private void clear() {
        headings.clear();
        offsets.clear();
        target.setText("");
    }

    /** Shows a page from its beginning. */
    void show(HelpTopic topic) {
        clear();
        append(topic.title(), Fonts.TITLE.font());
        topic.text().lines().forEach(this::line);
        target.setTopIndex(0);
    }

    private void line(String line) {
        if (line.startsWith(HEADING)) {
            String heading = line.substring(HEADING.length());
            headings.add(heading);
            offsets.add(target.getCharCount());
            int index = append(heading, Fonts.STRONG.font());
            target.setLineVerticalIndent(index, SPACE);
        } else if (line.startsWith(POINT)) {
            int index = append(line.substring(POINT.length()), Fonts.TEXT.font());
            StyleRange style = new StyleRange();
            style.metrics = new GlyphMetrics(0, 0, INDENT);
            style.foreground = Palette.MUTED.color();
            target.setLineBullet(index, 1, new Bullet(ST.BULLET_DOT, style));
        } else if (line.startsWith(FORMULA)) {
            int index = append(line.strip(), JFaceResources.getTextFont());
            target.setLineIndent(index, 1, INDENT);
        } else if (!line.isBlank()) {
            int index = append(line, Fonts.TEXT.font());
            target.setLineVerticalIndent(index, SPACE / 2);
        }
    }

    /** Adds a line; answers its index. */
    private int append(String line, Font font) {
        int start = target.getCharCount();
        target.append(line + "\n");
        StyleRange style = new StyleRange(start, line.length(), Palette.INK.color(), null);
        style.font = font;
        target.setStyleRange(style);
        return target.getLineAtOffset(start);
    }

    /** Marks the words of a search and brings the first to the top; nothing for no words. */
    void mark(String search) {
        String all = target.getText().toLowerCase(Locale.ROOT);
        int first = all.length();
        for (String word : search.isEmpty() ? new String[0] : search.toLowerCase(Locale.ROOT).split("\\s+")) {
            int afterTitle = Math.max(0, all.indexOf('\n'));
            int sought = all.indexOf(word, afterTitle);
            first = sought < 0 ? first : Math.min(first, sought);
            for (int at = all.indexOf(word); at >= 0; at = all.indexOf(word, at + word.length())) {
                background(at, word.length());
            }
        }
        if (first < all.length()) {
            target.setTopIndex(Math.max(0, target.getLineAtOffset(first) - 1));
        }
    }

    /** Fonts of the words stay. */
    private void background(int start, int length) {
        StyleRange style = target.getStyleRangeAtOffset(start);
        StyleRange marked = style == null ? new StyleRange() : (StyleRange) style.clone();
        marked.start = start;
        marked.length = length;
        marked.background = Palette.AMBER_WASH.color();
        target.setStyleRange(marked);
    }

    /** Brings a heading to the top, if the page has it. */
    void turnTo(String heading) {
        int place = headings.indexOf(heading);
        OptionalInt offset = place < 0 ? OptionalInt.empty() : OptionalInt.of(offsets.get(place));
        offset.ifPresent(at -> {
            target.setTopIndex(target.getLineAtOffset(at));
            target.setSelection(at, at + heading.length());
        });
    }
}
