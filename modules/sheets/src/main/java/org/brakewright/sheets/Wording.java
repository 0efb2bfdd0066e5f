package org.brakewright.sheets;

import org.brakewright.findings.Finding;

/** Findings in words, as the whole program says them. */
public interface Wording {
    /** Short name of what was judged. */
    String title(Finding finding);

    /** What happens, one or two sentences. */
    String sentence(Finding finding);
}
