package org.amberyard.workbench.sheets;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetCell;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetMemory;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** What the columns of sheets were said to hold, kept from one run of the program to the next. */
final class SheetMemories {
    private static final String NODE = "org.amberyard.workbench/tables";

    private SheetMemories() {
    }

    private static Preferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** Keeps what the columns of a sheet hold. */
    static void keep(SheetImport made) {
        SheetMemory memory = SheetMemory.of(made);
        node().put(key(made), memory.text());
        try {
            node().flush();
        } catch (BackingStoreException e) {
            ILog.of(SheetMemories.class).warn("The columns of " + made.sheet().place() + " are not remembered", e);
        }
    }

    /** All headers of the sheet: what was said of them last replaces what was said before. */
    private static String key(SheetImport made) {
        return Integer.toHexString(made.sheet().rows().stream().filter(r -> r.number() == made.mapping().headerRow())
                .map(r -> r.cells().stream().map(SheetCell::text).toList()).toList().hashCode());
    }

    /** What was said of a sheet with the same headers in the same order, else in another one. */
    static Optional<SheetImport> on(Sheet sheet) {
        try {
            Map<String, SheetImport> known = new TreeMap<>();
            for (String key : node().keys()) {
                SheetMemory.parse(node().get(key, "")).flatMap(m -> m.on(sheet)).ifPresent(made -> known.put(key, made));
            }
            return known.entrySet().stream().filter(e -> e.getKey().equals(key(e.getValue()))).map(Map.Entry::getValue).findFirst()
                    .or(() -> known.values().stream().findFirst());
        } catch (BackingStoreException e) {
            return Optional.empty();
        }
    }
}
