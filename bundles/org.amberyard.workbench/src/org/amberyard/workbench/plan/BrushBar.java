package org.amberyard.workbench.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.workbench.look.Palette;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The brushes to paint with; they tell too which ground stands for which type. */
final class BrushBar {

    private static final int SIZE = 14;

    private final ToolBar bar;
    private final Consumer<Brush> whenUsed;
    private final List<Image> pictures = new ArrayList<>();
    private List<Object> shown = List.of();
    private Brush used = Brush.SELECT;

    /** @param whenUsed hears which brush is in use */
    BrushBar(Composite parent, Consumer<Brush> whenUsed) {
        this.whenUsed = whenUsed;
        bar = new ToolBar(parent, SWT.FLAT | SWT.RIGHT | SWT.WRAP);
        bar.addListener(SWT.Dispose, e -> pictures.forEach(Image::dispose));
    }

    /** Offers the types that can be bought now; a brush whose type is gone is put away. */
    void show(TypeLooks looks) {
        List<Object> offered = new ArrayList<>();
        looks.offered().forEach(t -> offered.add(List.of(t, ElementNames.of(t), looks.shortName(t), looks.ground(t))));
        if (offered.equals(shown)) {
            return;
        }
        shown = offered;
        for (ToolItem old : bar.getItems()) {
            old.dispose();
        }
        pictures.forEach(Image::dispose);
        pictures.clear();
        add(Brush.SELECT, Messages.Brush_select, Messages.Brush_select_tip).setImage(picture(BrushBar::drawPointer));
        new ToolItem(bar, SWT.SEPARATOR);
        looks.offered().forEach(t -> addType(t, looks));
        new ToolItem(bar, SWT.SEPARATOR);
        add(Brush.RETIRE, Messages.Brush_retire, Messages.Brush_retire_tip).setImage(picture(BrushBar::drawCross));
        add(Brush.RULE, Messages.Brush_rule, Messages.Brush_rule_tip).setImage(picture(BrushBar::drawRing));
        use(looks.offered().contains(used.type()) || used.type() == null ? used : Brush.SELECT);
        bar.getParent().requestLayout();
    }

    private void addType(VehicleType type, TypeLooks looks) {
        String name = ElementNames.of(type);
        ToolItem item = add(Brush.buy(type), looks.shortName(type), NLS.bind(Messages.Brush_buy_tip, name));
        item.setImage(picture(gc -> drawSwatch(gc, looks.ground(type))));
    }

    private Image picture(Consumer<GC> drawing) {
        Image image = new Image(bar.getDisplay(), SIZE, SIZE);
        GC gc = new GC(image);
        gc.setAntialias(SWT.ON);
        gc.setBackground(Palette.BAND.color());
        gc.fillRectangle(0, 0, SIZE, SIZE);
        gc.setForeground(Palette.INK.color());
        drawing.accept(gc);
        gc.dispose();
        pictures.add(image);
        return image;
    }

    private static void drawSwatch(GC gc, Palette ground) {
        gc.setBackground(ground.color());
        gc.fillRectangle(0, 0, SIZE, SIZE);
        gc.setForeground(Palette.RULE.color());
        gc.drawRectangle(0, 0, SIZE - 1, SIZE - 1);
    }

    private static void drawPointer(GC gc) {
        gc.setBackground(Palette.INK.color());
        gc.fillPolygon(new int[] {3, 1, 3, 12, 6, 9, 8, 13, 10, 12, 8, 8, 12, 8});
    }

    private static void drawCross(GC gc) {
        gc.setLineWidth(2);
        gc.drawLine(3, 3, SIZE - 4, SIZE - 4);
        gc.drawLine(SIZE - 4, 3, 3, SIZE - 4);
    }

    private static void drawRing(GC gc) {
        gc.drawOval(2, 2, SIZE - 5, SIZE - 5);
    }

    private ToolItem add(Brush brush, String text, String tip) {
        ToolItem item = new ToolItem(bar, SWT.RADIO);
        item.setText(text);
        item.setToolTipText(tip);
        item.setData(brush);
        item.addListener(SWT.Selection, e -> {
            if (item.getSelection()) {
                use(brush);
            }
        });
        return item;
    }

    /** Takes a brush. */
    void use(Brush brush) {
        used = brush;
        for (ToolItem item : bar.getItems()) {
            if (item.getData() != null) {
                item.setSelection(Objects.equals(item.getData(), brush));
            }
        }
        whenUsed.accept(brush);
    }
}
