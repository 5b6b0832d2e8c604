package org.amberyard.workbench.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.DataDictionary;
import org.amberyard.report.Cautions;
import org.amberyard.workbench.language.Words;

/** The pages of the help: written ones, those of the model's fields, and the cautions. */
final class HelpTopics {
    private static final String FIELDS = "fields-";

    private static final String ALSO = "org.amberyard.workbench.help.also";

    private final List<HelpTopic> all = new ArrayList<>();
    private final ResourceBundle also = ResourceBundle.getBundle(ALSO, Locale.getDefault(), HelpTopics.class.getClassLoader(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

    HelpTopics() {
        add(Messages.Group_how, Map.entry("start", Messages.Topic_start), Map.entry("administrator", Messages.Topic_administrator),
                Map.entry("grants", Messages.Topic_grants), Map.entry("consultant", Messages.Topic_consultant));
        add(Messages.Group_methods, Map.entry("energy", Messages.Topic_energy), Map.entry("duty", Messages.Topic_duty),
                Map.entry("charging", Messages.Topic_charging), Map.entry("money", Messages.Topic_money));
        all.add(new HelpTopic("cautions", Messages.Group_how, Messages.Topic_cautions,
                Cautions.SENTENCES.stream().map(Words::say).collect(Collectors.joining("\n\n")), also("cautions")));
        addFields();
    }

    @SafeVarargs
    private void add(String group, Map.Entry<String, String>... topics) {
        for (Map.Entry<String, String> topic : topics) {
            all.add(new HelpTopic(topic.getKey(), group, topic.getValue(), written(topic.getKey()), also(topic.getKey())));
        }
    }

    /** Words of the trade that a page does not use itself. */
    private String also(String id) {
        return also.getString(id);
    }

    /** A page in the language of the window where there is one in it. */
    static String written(String id) {
        String spoken = id + "_" + Locale.getDefault().getLanguage();
        boolean has = HelpTopics.class.getResource(spoken + ".txt") != null;
        try (InputStream text = HelpTopics.class.getResourceAsStream((has ? spoken : id) + ".txt")) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The help has no page " + id, e);
        }
    }

    /** A page for each kind of element, made from the model. */
    private void addFields() {
        Map<String, List<DataDictionary.Row>> byElement = DataDictionary.rows(Words.model()).stream()
                .collect(Collectors.groupingBy(DataDictionary.Row::element, LinkedHashMap::new, Collectors.toList()));
        byElement.values().stream().filter(rows -> rows.size() > 1).forEach(rows -> all.add(new HelpTopic(FIELDS + rows.get(0).element(),
                Messages.Group_fields, rows.get(0).label(), rows.stream().map(HelpTopics::text).collect(Collectors.joining("\n\n")), "")));
    }

    private static String text(DataDictionary.Row row) {
        if (row.isElement()) {
            return row.documentation();
        }
        StringBuilder text = new StringBuilder("# ").append(row.label()).append('\n').append(row.documentation());
        append(text, Messages.Field_unit, unit(row.unit()));
        append(text, Messages.Field_range, Words.say(row.range()));
        append(text, Messages.Field_default, Words.say(row.defaultValue()));
        append(text, Messages.Field_source, row.defaultSource());
        return text.toString();
    }

    private static String unit(String token) {
        return Unit.ofToken(token).map(u -> u.symbol(UnitSystem.METRIC, Messages.Money) + (u.symbol(UnitSystem.US, Messages.Money)
                .equals(u.symbol(UnitSystem.METRIC, Messages.Money)) ? "" : Messages.Field_or + u.symbol(UnitSystem.US, Messages.Money))).orElse("");
    }

    private static void append(StringBuilder text, String label, String value) {
        if (!value.isEmpty()) {
            text.append("\n- ").append(label).append(' ').append(value);
        }
    }

    /** All pages, by group. */
    List<HelpTopic> all() {
        return all;
    }

    /** The page of an id. */
    Optional<HelpTopic> of(String id) {
        return all.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** Id of the page on the fields of a kind of element. */
    static String ofFields(String element) {
        return FIELDS + element;
    }
}
