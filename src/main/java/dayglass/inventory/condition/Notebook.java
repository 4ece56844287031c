package dayglass.inventory.condition;

import dayglass.inventory.picture.Pictures;

/** The notes, their pictures and the way to add one. */
public record Notebook(ConditionNotes notes, Pictures pictures, NoteCondition noteCondition) {}
