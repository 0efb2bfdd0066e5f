/** A build file being worked on: loading, editing, taking back. */
@NullMarked
package org.brakewright.app.workspace;

import org.jspecify.annotations.NullMarked;
