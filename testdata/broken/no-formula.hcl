# A page of notes, and no formula yet.
