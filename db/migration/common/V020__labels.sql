-- How labels lie on their paper, and what each printer does to a page; all in millimetres.

create table label_format (
  id              uuid primary key,
  version         integer not null,
  name            varchar(40) not null unique,
  paper_width_mm  numeric(6, 2) not null,
  paper_height_mm numeric(6, 2) not null,
  across          integer not null check (across between 1 and 20),
  down            integer not null check (down between 1 and 50),
  left_mm         numeric(6, 2) not null check (left_mm >= 0),
  top_mm          numeric(6, 2) not null check (top_mm >= 0),
  width_mm        numeric(6, 2) not null check (width_mm >= 45),
  height_mm       numeric(6, 2) not null check (height_mm >= 21),
  step_right_mm   numeric(6, 2) not null,
  step_down_mm    numeric(6, 2) not null,
  check (step_right_mm >= width_mm and step_down_mm >= height_mm),
  check (left_mm + (across - 1) * step_right_mm + width_mm <= paper_width_mm),
  check (top_mm + (down - 1) * step_down_mm + height_mm <= paper_height_mm)
);

create table label_format_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  name varchar(40), paper_width_mm numeric(6, 2), paper_height_mm numeric(6, 2),
  across integer, down integer, left_mm numeric(6, 2), top_mm numeric(6, 2),
  width_mm numeric(6, 2), height_mm numeric(6, 2),
  step_right_mm numeric(6, 2), step_down_mm numeric(6, 2),
  primary key (id, rev)
);

create table printer (
  id            uuid primary key,
  version       integer not null,
  name          varchar(40) not null unique,
  right_mm      numeric(4, 2) not null check (right_mm between -20 and 20),
  down_mm       numeric(4, 2) not null check (down_mm between -20 and 20),
  scale_percent numeric(5, 2) not null check (scale_percent between 90 and 110)
);

create table printer_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  name varchar(40), right_mm numeric(4, 2), down_mm numeric(4, 2), scale_percent numeric(5, 2),
  primary key (id, rev)
);

-- three plain formats to begin with, and a printer that does what it is told
insert into label_format values
  ('01900000-0000-7000-8000-000000000001', 0, 'A4 3 x 8', 210, 297, 3, 8, 6, 9, 64, 34, 67, 35),
  ('01900000-0000-7000-8000-000000000002', 0, 'A4 2 x 6', 210, 297, 2, 6, 8, 12, 94, 44, 100, 46),
  ('01900000-0000-7000-8000-000000000003', 0, 'Single 60 x 30', 60, 30, 1, 1, 0, 0, 60, 30, 60, 30);

insert into printer values
  ('01900000-0000-7000-8000-000000000011', 0, 'As it comes', 0, 0, 100);

-- so that their history begins here
insert into revision (id, at, username)
select nextval('revision_seq'), timestamp with time zone '2026-01-01 00:00:00+00', 'Trialwood';

insert into label_format_aud
select id, (select max(id) from revision), 0, name, paper_width_mm, paper_height_mm, across, down,
       left_mm, top_mm, width_mm, height_mm, step_right_mm, step_down_mm
from label_format;

insert into printer_aud
select id, (select max(id) from revision), 0, name, right_mm, down_mm, scale_percent from printer;
