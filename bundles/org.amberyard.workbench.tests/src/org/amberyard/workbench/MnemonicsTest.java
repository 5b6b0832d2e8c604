package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A letter that is pressed in an open menu means one of its items. */
class MnemonicsTest {
    private static final Pattern LETTER = Pattern.compile("&(.)");
    private static final List<String> MENU_BAR = List.of("menu:file", "menu:edit", "menu:plan", "menu:view", "menu:help");
    /** What the platform puts into the menu of edits, with our words. */
    private static final List<String> UNDO_AND_REDO = List.of("handlers/Undo_named", "handlers/Redo_named");
    private static final String CELLS = "fields/Menu_cut fields/Menu_copy fields/Menu_copyBare fields/Menu_copyPlain fields/Menu_paste "
            + "fields/Menu_fillDown fields/Menu_clear ";
    private static final String READ = "fields/Menu_copy fields/Menu_copyBare fields/Menu_selectAll ";
    /** Menus of the right mouse button, by where they are: packages and keys of their items. */
    private static final Map<String, String> OF_THE_MOUSE = Map.of(
            "table of elements", CELLS + "fields/Menu_vary fields/Menu_note fields/Menu_delete fields/Menu_filter fields/Menu_columns",
            "plan", CELLS + "plan/Menu_earlier plan/Menu_later plan/Menu_rule plan/Menu_fill plan/Menu_level plan/Menu_best plan/Menu_compare",
            "results", READ + "views/Menu_why columns/Menu_choose",
            "history", READ + "views/History_go_menu",
            "notes", READ + "views/Notes_open views/Notes_change",
            "headers", "columns/Menu_hide columns/Menu_left columns/Menu_right columns/Menu_freeze columns/Menu_choose columns/Menu_reset",
            "chart", "charts/Menu_copyPicture charts/Menu_copyData charts/Menu_savePng charts/Menu_saveSvg charts/Menu_savePdf "
                    + "charts/Menu_saveCsv charts/Menu_print charts/Menu_zoomIn charts/Menu_zoomOut charts/Menu_whole charts/Menu_series "
                    + "charts/Menu_notes charts/Menu_taskSheet charts/Menu_outage charts/Menu_inputs",
            "notes of a chart", "charts/Menu_noteHere charts/Menu_noteChange charts/Menu_noteDelete",
            "series of a chart", "charts/Menu_seriesAll",
            "menu bar", "/Menu_file /Menu_edit /Menu_plan /Menu_view /Menu_help");

    @ParameterizedTest
    @ValueSource(strings = {"", "_es"})
    void noTwoItemsOfAMenuShareALetter(String language) throws Exception {
        Properties labels = texts("/plugin" + language);
        Map<String, List<String>> menus = new TreeMap<>();
        NodeList contributions = plugin().getElementsByTagName("menuContribution");
        elements(contributions).filter(m -> MENU_BAR.contains(m.getAttribute("locationURI")))
                .forEach(m -> collect(m.getAttribute("locationURI"), m, labels, menus));
        assertEquals(MENU_BAR.size(), menus.keySet().stream().filter(MENU_BAR::contains).count());
        for (String item : UNDO_AND_REDO) {
            menus.get("menu:edit").add(text(item, language));
        }
        for (Map.Entry<String, String> menu : OF_THE_MOUSE.entrySet()) {
            for (String item : menu.getValue().split(" ")) {
                menus.computeIfAbsent(menu.getKey(), m -> new ArrayList<>()).add(text(item, language));
            }
        }
        List<String> shared = menus.entrySet().stream().flatMap(m -> shared(m.getKey(), m.getValue())).toList();
        assertEquals(List.of(), shared);
    }

    /** What has a letter in a menu of the mouse is one of the items above. */
    @ParameterizedTest
    @ValueSource(strings = {"charts", "columns", "fields", "plan", "views"})
    void noItemIsForgotten(String place) throws IOException {
        Set<String> listed = OF_THE_MOUSE.values().stream().flatMap(m -> Stream.of(m.split(" "))).collect(Collectors.toSet());
        assertEquals(Set.of(), texts(place + "/messages").stringPropertyNames().stream().filter(k -> k.startsWith("Menu_"))
                .map(k -> place + "/" + k).filter(k -> !listed.contains(k)).collect(Collectors.toCollection(TreeSet::new)));
    }

    private static void collect(String name, Element menu, Properties labels, Map<String, List<String>> menus) {
        elements(menu.getChildNodes()).filter(e -> e.hasAttribute("label")).forEach(item -> {
            String key = item.getAttribute("label").substring(1);
            menus.computeIfAbsent(name, m -> new ArrayList<>()).add(labels.getProperty(key));
            if (item.getTagName().equals("menu")) {
                collect(key, item, labels, menus);
            }
        });
    }

    /** The items of a menu whose letter one before them has. */
    private static Stream<String> shared(String menu, List<String> items) {
        Set<String> letters = new HashSet<>();
        return items.stream().filter(item -> letter(item).filter(l -> !letters.add(l)).isPresent()).map(item -> menu + ": " + item);
    }

    private static Optional<String> letter(String item) {
        return LETTER.matcher(item.replace("&&", "")).results().map(MatchResult::group).map(l -> l.toLowerCase(Locale.ROOT)).findFirst();
    }

    private static Stream<Element> elements(NodeList nodes) {
        return IntStream.range(0, nodes.getLength()).mapToObj(nodes::item).filter(n -> n.getNodeType() == Node.ELEMENT_NODE)
                .map(Element.class::cast);
    }

    /** The extensions that have our menus: other bundles of the class path have some too. */
    private static Element plugin() throws IOException, ParserConfigurationException, SAXException {
        for (URL file : Collections.list(MnemonicsTest.class.getClassLoader().getResources("plugin.xml"))) {
            try (InputStream in = file.openStream()) {
                Element plugin = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in).getDocumentElement();
                if (elements(plugin.getElementsByTagName("menuContribution")).anyMatch(m -> m.getAttribute("locationURI").equals(MENU_BAR.get(0)))) {
                    return plugin;
                }
            }
        }
        throw new AssertionError("No extensions with menus");
    }

    private static String text(String item, String language) throws IOException {
        int slash = item.indexOf('/');
        String folder = slash == 0 ? "" : item.substring(0, slash + 1);
        String text = texts(folder + "messages" + language).getProperty(item.substring(slash + 1));
        assertNotNull(text, item);
        return text;
    }

    private static Properties texts(String name) throws IOException {
        try (InputStream in = MnemonicsTest.class.getResourceAsStream(name + ".properties")) {
            assertNotNull(in, name);
            Properties texts = new Properties();
            texts.load(in);
            return texts;
        }
    }
}
