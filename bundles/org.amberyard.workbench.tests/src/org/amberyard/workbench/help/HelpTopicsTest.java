package org.amberyard.workbench.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.meta.DataDictionary;
import org.amberyard.model.meta.ModelWords;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.BundleWiring;

/** The table of contents of the help: what stands in it, in which order, each page once and each with a text. */
class HelpTopicsTest {
    private static final String FOLDER = "org/amberyard/workbench/help/";
    private static final List<String> HOW = List.of("start", "administrator", "grants", "consultant");
    private static final List<String> METHODS = List.of("energy", "duty", "charging", "money");

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    private static List<HelpTopic> topics(String language) {
        Locale.setDefault(new Locale(language));
        return new HelpTopics().all();
    }

    private static List<String> ids(String group) {
        return new HelpTopics().all().stream().filter(t -> t.group().equals(group)).map(HelpTopic::id).toList();
    }

    @Test
    void pagesStandInTheirOrder() {
        List<String> how = new ArrayList<>(HOW);
        how.add("cautions");
        assertEquals(how, ids(Messages.Group_how));
        assertEquals(METHODS, ids(Messages.Group_methods));
        assertEquals(kinds().stream().map(HelpTopics::ofFields).toList(), ids(Messages.Group_fields));
        assertEquals(List.of(Messages.Group_how, Messages.Group_methods, Messages.Group_fields),
                new HelpTopics().all().stream().map(HelpTopic::group).distinct().toList());
    }

    /** Kinds of elements that define fields, in the order of the data dictionary. */
    private static List<String> kinds() {
        return DataDictionary.rows().stream().filter(r -> !r.isElement()).map(DataDictionary.Row::element).distinct().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everyEntryOpensAPageOfItsOwn(String language) {
        List<HelpTopic> all = topics(language);
        assertEquals(all.size(), all.stream().map(HelpTopic::id).collect(Collectors.toSet()).size());
        assertEquals(all.size(), all.stream().map(t -> t.group() + t.title()).collect(Collectors.toSet()).size());
        assertEquals(all.size(), all.stream().map(HelpTopic::text).collect(Collectors.toSet()).size());
        for (HelpTopic topic : all) {
            assertFalse(topic.title().isBlank() || topic.text().isBlank(), topic.id());
            assertEquals(topic, new HelpTopics().of(topic.id()).orElseThrow());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"messages.properties", "messages_es.properties"})
    void titlesOfWrittenPagesTellThemApart(String language) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = HelpTopics.class.getResourceAsStream(language)) {
            texts.load(in);
        }
        List<String> titles = texts.stringPropertyNames().stream().filter(k -> k.startsWith("Topic_") || k.startsWith("Group_"))
                .map(texts::getProperty).toList();
        assertEquals(HOW.size() + METHODS.size() + 1 + 3, titles.size());
        assertEquals(titles.size(), new HashSet<>(titles).size());
    }

    @Test
    void kindsOfElementsAreToldApartInSpanish() {
        Map<String, String> labels = DataDictionary.rows(ModelWords.of(new Locale("es"))).stream().filter(DataDictionary.Row::isElement)
                .filter(r -> kinds().contains(r.element())).collect(Collectors.toMap(DataDictionary.Row::element, DataDictionary.Row::label));
        assertEquals(kinds().size(), labels.size());
        assertEquals(labels.size(), new HashSet<>(labels.values()).size(), labels.toString());
    }

    @Test
    void everyWrittenPageIsListedAndThereInSpanish() {
        Set<String> pages = FrameworkUtil.getBundle(HelpTopics.class).adapt(BundleWiring.class)
                .listResources(FOLDER, "*.txt", BundleWiring.LISTRESOURCES_LOCAL).stream()
                .map(p -> p.substring(FOLDER.length(), p.length() - ".txt".length())).collect(Collectors.toSet());
        Set<String> listed = new HashSet<>(HOW);
        listed.addAll(METHODS);
        // Written like a page, shown as the list of keys.
        listed.add("keys");
        assertEquals(listed, pages.stream().filter(p -> !p.endsWith("_es")).collect(Collectors.toSet()));
        assertEquals(listed, pages.stream().filter(p -> p.endsWith("_es")).map(p -> p.replace("_es", "")).collect(Collectors.toSet()));
        Map<String, String> english = topics("en").stream().collect(Collectors.toMap(HelpTopic::id, HelpTopic::text));
        for (HelpTopic spanish : topics("es")) {
            if (listed.contains(spanish.id())) {
                assertNotEquals(english.get(spanish.id()), spanish.text(), spanish.id());
                assertEquals(headings(english.get(spanish.id())), headings(spanish.text()), spanish.id());
            }
        }
    }

    /** Words of the trade lead to a page, in both languages. */
    @ParameterizedTest
    @CsvSource({"en, Monte Carlo, consultant", "en, break-even, money", "en, audit, grants", "en, optim, administrator", "en, TCO, money",
        "es, Monte Carlo, consultant", "es, punto de equilibrio, money", "es, auditoría, grants", "es, optimiza, charging"})
    void wordsOfTheTradeLeadToAPage(String language, String words, String page) {
        assertTrue(topics(language).stream().filter(t -> t.has(words)).anyMatch(t -> t.id().equals(page)), words);
    }

    private static long headings(String text) {
        return text.lines().filter(l -> l.startsWith("# ")).count();
    }
}
