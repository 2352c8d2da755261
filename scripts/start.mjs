// written later
