package org.brakewright.kernel.structure;

/**
 * What is wrong with a model or a load case.
 *
 * @param what number of the node or element it concerns
 */
public record Fault(Kind kind, int what) {
    /** The kinds of fault; the comment says what the number means. */
    public enum Kind {
        /** The element that names a node there is not. */
        ELEMENT_NODE_UNKNOWN,
        /** The node, named by a link, that there is not. */
        LINK_NODE_UNKNOWN,
        /** The node, named by a support, that there is not. */
        SUPPORT_NODE_UNKNOWN,
        /** The node, named by a load, that there is not. */
        LOAD_NODE_UNKNOWN,
        /** The element, named by a load, that there is not or that is of another kind. */
        LOAD_ELEMENT_UNKNOWN,
        /** The beam whose ends fall on one point. */
        BEAM_WITHOUT_LENGTH,
        /** The beam whose up direction runs along it. */
        BEAM_UP_ALONG_IT,
        /** The spring whose two nodes are one. */
        SPRING_TO_ITSELF,
        /** The shell whose corners lie on a line. */
        SHELL_WITHOUT_AREA,
        /** The node that follows two leaders. */
        FOLLOWS_TWICE,
        /** The node that in the end follows itself. */
        FOLLOWS_ITSELF,
        /** The node that follows a leader and is supported too. */
        FOLLOWER_SUPPORTED,
        /** The node that is to settle where no support holds it. */
        SETTLES_UNHELD
    }
}
