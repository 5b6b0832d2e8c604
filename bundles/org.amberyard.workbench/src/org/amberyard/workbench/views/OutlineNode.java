package org.amberyard.workbench.views;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EObject;

/**
 * A line of the outline: an element, or a list of elements under its name. Two nodes are equal when they stand for the
 * same, so that the tree keeps its open branches when it is read again.
 */
final class OutlineNode {

    private final OutlineNode parent;
    private final String label;
    private final PageKind page;
    private final EObject element;
    private final Supplier<List<OutlineNode>> children;

    private OutlineNode(OutlineNode parent, String label, PageKind page, EObject element,
            Supplier<List<OutlineNode>> children) {
        this.parent = parent;
        this.label = label;
        this.page = page;
        this.element = element;
        this.children = children;
    }

    /** A single element. */
    static OutlineNode of(String label, EObject element) {
        return new OutlineNode(null, label, PageKind.of(element), element, List::of);
    }

    /** A list of elements, each with what it holds. */
    static OutlineNode of(String label, PageKind page, List<? extends EObject> elements) {
        OutlineNode[] self = new OutlineNode[1];
        self[0] = new OutlineNode(null, label, page, null,
                () -> elements.stream().map(e -> self[0].child(e, List::of)).toList());
        return self[0];
    }

    /** A list of elements that hold elements themselves. */
    static <E extends EObject> OutlineNode of(String label, PageKind page, List<E> elements, OutlineBranch<E> branch) {
        OutlineNode[] self = new OutlineNode[1];
        self[0] = new OutlineNode(null, label, page, null,
                () -> elements.stream().map(e -> self[0].holder(e, branch)).toList());
        return self[0];
    }

    private <E extends EObject> OutlineNode holder(E holder, OutlineBranch<E> branch) {
        OutlineNode[] self = new OutlineNode[1];
        self[0] = child(holder, () -> branch.held(holder).stream().map(e -> self[0].child(e, List::of)).toList());
        return self[0];
    }

    private OutlineNode child(EObject member, Supplier<List<OutlineNode>> below) {
        return new OutlineNode(this, Words.name(member), page, member, below);
    }

    String label() {
        return label;
    }

    OutlineNode parent() {
        return parent;
    }

    PageKind page() {
        return page;
    }

    /** The element to show, or null for a list. */
    EObject element() {
        return element;
    }

    List<OutlineNode> children() {
        return children.get();
    }

    /** A list is what it is called; an element is itself, whatever it is called now. */
    private Object identity() {
        return element == null ? label : element;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OutlineNode node && node.identity().equals(identity()) && node.page == page;
    }

    @Override
    public int hashCode() {
        return Objects.hash(identity(), page);
    }
}
